package plumbrow.documents.sheet.section;

import java.util.regex.Pattern;

/**
 * Words that stand before a value, in every wording that is known. A label of its own also ends the value before it, so the
 * list holds more than is read.
 *
 * Source: headings and subheadings of 29 CFR 1910.1200 App. D, REACH Annex II and ANSI Z400.1;
 * further wordings are common practice.
 */
public enum Label {
    // section 1
    PRODUCT_NAME(
            "(?:product|trade|commercial|material) ?names?|name of (?:the )?product|(?:ghs )?product identifier(?: used on the label)?|product identity|product|trademark|identity (?:\\(as used on label and list\\))?"),
    SYNONYMS(
            "synonyms?|other (?:names?|means of identification)|product (?:codes?(?:\\(s\\))?|numbers?(?:\\(s\\))?|types?|id|class|form|grades?|description|group)|item numbers?|part numbers?|sds (?:id|numbers?)|msds (?:#|id|numbers?|no\\.?)|additional names|chemical (?:family|class|name of active ingredient)|common names?|chemical names?|formula(?:tion type)?|molecular (?:formula|weight)|type of formulation|pure substance/mixture|UFI"),
    REGISTRATION(
            "(?:u\\.?s\\.? ?)?epa ?(?:reg(?:istration|\\.)?|registration) ?(?:no\\.?|number|#|nos\\.?)|epa reg\\.?|registration (?:no\\.?|number)|reg\\. ?no\\.?"),
    ESTABLISHMENT("epa est\\.? ?(?:no\\.?|number)?|establishment (?:no\\.?|number)"),
    USE(
            "(?:recommended|identified|relevant identified|intended|product)? ?uses?(?: of the (?:substance|mixture|product).*?)?|restrictions on use|uses? advised against|relevant identified uses.*?"),
    COMPANY(
            "(?:company|manufacturer|supplier|distributor|registrant|responsible party|manufactured (?:by|for)|distributed by|importer|producer|details of the supplier.*?)(?: (?:name|information|identification))?|address|e-?mail(?: address)?|website|contact(?: person)?"),
    EMERGENCY_PHONE(
            "(?:24[- ]?h(?:ou)?rs?|medical|transport(?:ation)?|chemical|spill|health|company)?[- ]?(?:/ ?24[- ]?h(?:ou)?rs? )?emergenc(?:y|ies)(?: (?:tele)?phones?)?(?: (?:numbers?|no\\.?|contact|information|assistance|response))?(?: \\(?24[- ]?h(?:ou)?rs?\\)?)?|in case of (?:an )?emergency,? ?(?:call|phone|telephone)?|for (?:medical|chemical|transport(?:ation)?|fire, leak or other)[^:]{0,40}emergenc(?:y|ies)[^:]{0,40}?|poison (?:control )?(?:cent(?:er|re))|emergency call|medical emergenc(?:y|ies)"),
    PHONE(
            "(?:tele)?phone(?: (?:number|no\\.?))?|fax(?: (?:number|no\\.?))?|tel\\.?|(?:general|product|customer|non-emergency) (?:information|service|inquiries|phone)(?: (?:number|phone))?|information"),
    REVISION_DATE(
            "(?:date of (?:last |this |latest )?revision|(?:last |latest )?revision ?date|(?:last |date )?revised(?: on| date)?|revision(?: no\\.? ?\\d+)?|date revised|last (?:update|change)d?)"),
    ISSUE_DATE(
            "(?:date of (?:issue|preparation|first issue)|issu(?:e|ed|ing) ?date|date (?:issued|prepared|of compilation)|(?:msds |sds |sheet )?(?:preparation|creation|effective|version) date|prepared(?: on)?|issued(?: on)?|(?:msds|sds) date)"),
    SUPERSEDES(
            "(?:supersedes|replaces)(?: (?:the )?(?:sds|msds|date|version|sheet|issue|revision))*(?: (?:of|dated|from))?|date of previous (?:issue|version|revision)|previous (?:revision|version|issue)(?: date)?"),
    // section 2
    SIGNAL_WORD("(?:label )?signal ?words?(?:\\(s\\))?"),
    HAZARD_STATEMENTS(
            "(?:ghs |label )?hazard ?statements?(?: ?\\(s\\))?|hazard\\(s\\) statements?|health hazards? statements?"),
    PRECAUTIONS("(?:label )?precautionary ?statements?(?: ?\\(s\\))?|prevention|response|storage statements?"),
    CLASSIFICATION(
            "(?:ghs |osha |hazard )?classifications?(?: of the (?:substance|mixture|product|chemical))?.{0,60}?|hazard class(?:es)? and category|label elements|pictograms?|symbols?|other hazards|hazards? not otherwise classified.*?|emergency overview|unknown acute toxicity|potential health effects|ghs label elements|routes? of (?:entry|exposure)|target organs|hmis|nfpa"),
    // section 3
    INGREDIENT_NAME(
            "chemical name|ingredient(?: name)?|component(?: name)?|substance(?: name)?|active ingredient(?:\\(s\\)|s)?|hazardous (?:ingredient|component)s?"),
    CAS("cas(?:[- ]?(?:no|number|nr|reg(?:istry)?\\.? ?(?:no|number)))?\\.?"),
    CONCENTRATION("concentration|content|weight ?%|% ?(?:by weight|w/w|weight)?|percent(?:age)?(?: by weight)?|amount"),
    // section 4
    SWALLOWED(Before.FIRST_AID
            + "(?:(?:if |after |in case of )?(?:swallow(?:ed|ing)|ingest(?:ed|ion))|oral|ingestion first aid)"),
    ON_SKIN(
            Before.FIRST_AID
                    + "(?:(?:if |after |in case of )?(?:on )?(?:the )?skin(?: or (?:on )?clothing)?(?: contact| exposure)?|(?:in case of )?contact with (?:the )?skin|dermal)"),
    IN_EYES(
            Before.FIRST_AID
                    + "(?:(?:if |after |in case of )?(?:in )?(?:the )?eyes?(?: contact| exposure)?|(?:in case of )?contact with (?:the )?eyes)"),
    INHALED(Before.FIRST_AID + "(?:(?:if |after |in case of )?inhal(?:ed|ation|ing)|(?:if )?breathed(?: in)?)"),
    SYMPTOMS(
            "(?:most important )?symptoms?(?:(?: and|/) ?(?:effects|injuries))?.{0,60}?|signs and symptoms.{0,40}?|most important symptoms.{0,60}?|(?:potential )?(?:acute |chronic |adverse )*(?:human )?health effects.{0,30}?|over-?exposure (?:signs|symptoms).{0,20}?|(?:aggravated )?medical conditions?.{0,40}?"),
    PHYSICIAN(
            "notes? to (?:the )?(?:physician|doctor)s?|indication of (?:any )?immediate medical.{0,70}?|(?:medical )?treatment|antidote|advice to (?:physician|doctor)s?"),
    GENERAL_ADVICE(
            "(?:first[- ]?aid (?:measures )?)?general(?: advice| information| notes| measures)?|description of (?:necessary )?(?:first[- ]aid|first aid) measures|self-protection of the first aider|protection of first-aiders"),
    // section 5
    EXTINGUISHING(
            "(?:suitable )?(?:fire )?extinguishing (?:media|agents?)|suitable (?:extinguishing )?media|fire extinguishing media"),
    UNSUITABLE_MEDIA(
            "unsuitable (?:extinguishing )?media|extinguishing media (?:which|that) (?:must|should|shall) not.{0,40}?"),
    FIRE_ADVICE(
            "(?:advice|instructions) (?:for|to) fire-?fighters|(?:special )?fire[- ]?fighting (?:instructions|procedures|advice)|special (?:protective )?(?:equipment|precautions)(?: and (?:precautions|fire fighting procedures))? for fire-?fighters|fire fighting"),
    LOWER_LIMIT("lower " + Before.BURNING + "(?: ?/ ?" + Before.BURNING + ")? limits?(?: ?/ ?" + Before.BURNING
            + " limits?)?(?:,? ?% ?(?:in|by).{0,20}?)?|LEL|LFL|" + Before.BURNING + " limits? ?[-–,] ?lower"),
    UPPER_LIMIT("upper " + Before.BURNING + "(?: ?/ ?" + Before.BURNING + ")? limits?(?: ?/ ?" + Before.BURNING
            + " limits?)?(?:,? ?% ?(?:in|by).{0,20}?)?|UEL|UFL|" + Before.BURNING + " limits? ?[-–,] ?upper"),
    FIRE_HAZARDS(
            "(?:lower and upper|upper and lower|lower/upper|upper/lower) (?:explosive|flammab).{0,40}?|(?:specific|special|unusual)(?: fire (?:and|&) explosion)? hazards?.{0,60}?|hazardous combustion products|combustion products|fire (?:and|&) explosion hazards?|flammab(?:le|ility) limits?.{0,20}?|(?:lower|upper) (?:flammab(?:le|ility)|explosi(?:ve|on)) limits?.{0,20}?|(?:lower|upper)/(?:upper|lower).{0,40}?|explosive (?:limits|properties)|auto-?ignition temperature|flammability.{0,20}?|explosion limits.{0,20}?|NFPA (?:rating|class)"),
    // section 6
    PERSONAL_PRECAUTIONS("personal precautions.{0,70}?|environmental precautions|reference to other sections"),
    CLEAN_UP(
            "(?:methods?|steps|procedures|materials)(?: and materials?)?(?: for| to be taken)? (?:the )?(?:containment|cleaning ?up|clean-?up|in case).{0,60}?|spill (?:clean-?up|procedures?|response)|clean-?up(?: methods?| procedures?)?|methods? (?:for|of) (?:clean|contain).{0,40}?|in case of (?:a )?spill or leak|small spills?|large spills?"),
    REPORTABLE("(?:cercla |superfund )?(?:reportable quantit(?:y|ies)|rq)(?: \\(rq\\))?(?: \\(.{0,30}?\\))?|cercla rq"),
    // section 7
    HANDLING(
            "(?:precautions for )?safe handling(?: advice)?|(?:advice on )?(?:safe )?handling(?: (?:procedures|precautions|advice))?|precautions for safe handling|precautions to be taken in handling"),
    STORAGE(
            "(?:conditions for )?safe storage.{0,60}?|storage(?: (?:conditions|requirements|procedures|precautions|temperature))?|conditions for safe storage.{0,60}?"),
    END_USE("specific end uses?.{0,10}?|incompatible products|packaging materials?"),
    // section 8
    LIMITS(
            "(?:occupational )?exposure (?:limits?|guidelines)(?: values?)?|control parameters|(?:osha )?pel|(?:acgih )?tlv|(?:niosh )?rel|wel|oel|dnel.{0,10}?|pnec.{0,10}?|biological (?:limit|exposure).{0,20}?"),
    ENGINEERING(
            "(?:appropriate )?engineering (?:controls?|measures)|ventilation|exposure controls|environmental exposure controls?|technical measures"),
    EYE_PROTECTION(
            Before.GEAR
                    + "(?:eyes? ?(?:/ ?face)?(?: ?(?:and|or) ?face)? ?protection|eyes?/face|protective eyewear|eye wear|eyewear)"),
    HAND_PROTECTION(
            Before.GEAR
                    + "(?:(?:skin protection ?[-–] ?)?hand protection|hands?(?: ?/ ?body)?|(?:protective |chemical-resistant )?gloves|protection of hands)"),
    SKIN_PROTECTION(
            Before.GEAR
                    + "(?:(?:skin|body|skin and body|skin/body|clothing)(?: and (?:body|skin))? ?protection(?: ?[-–] ?(?:other|body))?|protective clothing(?: type)?|body protection|clothing|other skin protection)"),
    BREATHING_PROTECTION(
            Before.GEAR
                    + "(?:respirat(?:ory|or) ?(?:protection|protective equipment)?|protection of (?:the )?respiratory.{0,20}?|breathing protection)"),
    PROTECTION(
            "(?:individual protection measures.{0,60}?|personal protective equipment.{0,20}?|hygiene (?:measures|considerations)|(?:general )?(?:industrial )?hygien(?:e|ic).{0,20}?|(?:other )?work practices|thermal hazards|other precautions|respirator types?|ventilation protection|other protective equipment|control of environmental exposure|general protective measures)"),
    // section 9
    VAPOUR_PRESSURE("vapou?r ?pressure|vap\\.? press(?:ure|\\.)"),
    BOILING_POINT(
            "(?:initial )?boiling(?: ?/ ?condensation)? (?:point|temperature|range)(?:(?: ?/ ?| and | or )(?:initial )?boiling range|/range)?|(?:initial )?b\\.?p\\.?"),
    FLASH_POINT("flash ?-?point"),
    DENSITY(
            "(?:relative )?density(?: and/or relative density)?(?: ?/ ?specific gravity)?|specific gravity(?: ?/ ?(?:relative )?density)?|sp\\.? ?gr(?:avity|\\.)|specific weight|liquid density"),
    OTHER_DENSITY("(?:relative )?vapou?r density|bulk density|density of vapou?r|relative vapou?r density"),
    PH("pH(?:[- ]value)?"),
    SOLUBILITY(
            "(?:water )?solubility(?:\\(ies\\)|ies)?(?: ?\\(?in water\\)?| ?\\(water\\))?|water solubility|solubilit(?:y|ies) in (?:other solvents|water)|miscibility with water|solubility\\(ies\\)"),
    OTHER_SOLUBILITY(
            "solubility in (?:other|organic) solvents|fat solubility|solubility in other solvents|solubility \\(other\\)"),
    PARTITION(
            "(?:n-?)?(?:octanol|partition)[-/ ,]?(?:/?water|water|coefficient)?(?: partition)?(?: coefficient)?(?: ?:?,? ?\\(?n?-?octanol ?[/-] ?water\\)?)?(?: \\(?log(?: value| [KP]ow)\\)?)?|log ?(?:10 ?)?[KP]ow|log ?P|kow|coefficient of water/oil distribution"),
    MELTING_POINT(
            "(?:melting|freezing|pour|softening) ?(?:point|range)(?: ?/ ?(?:melting|freezing) (?:point|range))?|melting/freezing point"),
    LOOKS("appearance|colou?r|odou?r(?: threshold)?|physical (?:state|form)|form|state"),
    EVAPORATION("(?:relative )?evaporation rate.{0,30}?"),
    VOC(
            "volatile organic (?:compounds?|contents?|chemicals?)(?: ?\\(?VOCs?\\)?)?(?: contents?)?|VOCs?(?: contents?)?|(?:CARB )?method 310\\**"),
    OTHER_PROPERTY(
            "(?:dynamic |kinematic )?viscosity.{0,20}?|decomposition temperature|oxidi[sz]ing properties|particle (?:size|characteristics)|surface tension|volatil(?:ity|es).{0,20}?|percent volatile.{0,20}?|voc .{0,20}?|(?:SCAQMD|EPA) .{0,30}?|henry'?s (?:distribution )?constant|weight per gallon|other (?:information|properties)|pka|dissociation constant|molecular weight|density of solid"),
    // section 10
    STABLE("(?:chemical )?stability"),
    INCOMPATIBLE(
            "incompatible (?:materials|with|substances|products)|incompatib(?:ility|ilities)(?: \\(materials to avoid\\)| \\(specific materials to avoid\\))?|materials? to avoid|substances to avoid"),
    REACTIVITY(
            "reactivity|(?:possibility of )?hazardous reactions?|conditions to avoid|hazardous (?:decomposition(?: products)?|polymeri[sz]ation)|polymeri[sz]ation|decomposition products"),
    // section 13
    DISPOSAL(
            "(?:waste )?(?:disposal|treatment)(?: of (?:product|waste)| (?:methods?|recommendations|instructions|considerations))?|waste (?:disposal|treatment)(?: methods?)?|product disposal|pesticide disposal"),
    CONTAINER_DISPOSAL(
            "(?:contaminated|empty)? ?(?:packaging|containers?)(?: disposal| handling)?(?: (?:and|/) .{0,20})?|container disposal|waste codes?.{0,20}?"),
    // section 14
    UN_NUMBER(
            "un ?/? ?(?:id|na)?[- ]?(?:no|number|nr)\\.?(?: or id number)?|(?:un|u\\.n\\.|id) (?:number|no\\.?)|identification (?:number|no\\.?)"),
    SHIPPING_NAME(
            "(?:(?:un|u\\.n\\.|dot|imdg|imo|iata|dot ?/ ?imo) )?(?:proper )?shipping (?:name|description)|(?:.{0,30}? )?bill of lading description|description of (?:the )?goods"),
    TRANSPORT_CLASS(
            "(?:transport|dot|primary|un|imdg|iata)? ?hazard class(?:\\(es\\)|es|ification)?(?:/division)?|class(?:/division)?|transport hazard class\\(es\\)|hazard class/division|division"),
    PACKING_GROUP("(?:(?:dot|imdg|imo|iata) )?pack(?:ing|aging) ?group"),
    MARINE_POLLUTANT("marine pollutants?"),
    TRANSPORT_OTHER(
            "environmental hazards?|special precautions for users?|transport in bulk.{0,60}?|erg(?: guide)?(?: (?:no\\.?|number))?|ems(?: no\\.?)?|labels?(?: required)?|technical name|emergency response guide.{0,20}?"),
    REGULATORY_LIST(
            "(?:us |u\\.s\\. )?(?:(?:sara|epcra)(?: title iii)?,?(?: (?:section|sec\\.|sections))? ?(?:\\d{3}(?: ?[/,] ?\\d{3})*+.{0,50}?)?|tsca.{0,30}?|fifra.{0,20}?|(?:california )?prop(?:osition|\\.)? ?65|rcra.{0,20}?|(?:clean (?:water|air) act|cwa|caa).{0,20}?|(?:state )?right[- ]to[- ]know.{0,20}?|cercla)"),
    MODE(
            "(?:(?:us|u\\.s\\.) )?(?:dot|imdg|iata|icao|adr|rid|tdg|imo)(?:(?: ?/ ?|-)(?:rid|icao|adn|imo|iata|imdg|adr|cao|pax))*(?: ?\\(.{0,30}?\\))?(?: (?:regulations?|classification|information|transport|shipping description|road|sea|air))?|(?:land|road|sea|air|ground|water|vessel|maritime) ?(?:transport|shipment|transportation)?(?: ?\\(.{0,30}?\\))?|49 cfr.{0,20}?"),
    // sections 11 and 12 carry their measures in running text; these only end other values
    OTHER_TEXT(
            "print(?:ing|ed)? date|date of print(?:ing)?|remarks?|comments?|notes?|test method|method|guideline|further information|other adverse effects|results? of pbt.{0,30}?|persistence and degradability|bioaccumulati(?:on|ve potential)|mobility(?: in soil)?");

    /** What may stand before the words of a label, in every one of its section. */
    private static final class Before {
        static final String FIRST_AID = "(?:first[- ]?aid(?: measures)?:? )?";
        static final String BURNING = "(?:flammab(?:le|ility)|explosi(?:ve|on))";
        static final String GEAR = "(?:personal protective equipment ?[:–-] )?";
    }

    @SuppressWarnings("ImmutableEnumChecker") // patterns never change
    private final Pattern words;

    Label(String words) {
        this.words = Pattern.compile("(?:" + words + ")", Pattern.CASE_INSENSITIVE);
    }

    Pattern words() {
        return words;
    }
}
