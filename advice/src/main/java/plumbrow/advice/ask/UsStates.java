package plumbrow.advice.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The states of the union as the options of a box: those with typical values of their own first. */
final class UsStates {
    private static final String OWN =
            "IA Iowa|IL Illinois|IN Indiana|KS Kansas|KY Kentucky|MI Michigan|MN Minnesota|MO Missouri|ND North Dakota|"
                    + "NE Nebraska|OH Ohio|SD South Dakota|WI Wisconsin";
    private static final String OTHERS =
            "AL Alabama|AK Alaska|AZ Arizona|AR Arkansas|CA California|CO Colorado|CT Connecticut|DE Delaware|FL Florida|"
                    + "GA Georgia|HI Hawaii|ID Idaho|LA Louisiana|ME Maine|MD Maryland|MA Massachusetts|MS Mississippi|"
                    + "MT Montana|NV Nevada|NH New Hampshire|NJ New Jersey|NM New Mexico|NY New York|NC North Carolina|"
                    + "OK Oklahoma|OR Oregon|PA Pennsylvania|RI Rhode Island|SC South Carolina|TN Tennessee|TX Texas|"
                    + "UT Utah|VT Vermont|VA Virginia|WA Washington|WV West Virginia|WY Wyoming";

    private static final Pattern SEPARATOR = Pattern.compile("\\|");

    private UsStates() {}

    static String[] options() {
        List<String> all = new ArrayList<>();
        for (String state : SEPARATOR.split(OWN + "|" + OTHERS, -1)) {
            all.add(state.substring(0, 2));
            all.add(state.substring(3));
        }
        return all.toArray(String[]::new);
    }

    /** "Iowa"; the postal code where it is none of these. */
    static String name(String code) {
        for (String state : SEPARATOR.split(OWN + "|" + OTHERS, -1)) {
            if (state.startsWith(code + " ")) {
                return state.substring(3);
            }
        }
        return code;
    }
}
