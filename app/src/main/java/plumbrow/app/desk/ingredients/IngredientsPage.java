package plumbrow.app.desk.ingredients;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.app.desk.Asked;
import plumbrow.app.json.SubstanceSummary;
import plumbrow.science.reference.Substances;

/** The list of active ingredients, and every value of one. */
@Controller
public class IngredientsPage {
    @GetMapping("/ingredients")
    String list(@RequestParam(name = "q", defaultValue = "") String asked, Model model) {
        model.addAttribute("asked", asked);
        model.addAttribute("found", Substances.search(asked));
        model.addAttribute("of", Substances.all().size());
        return "ingredients";
    }

    @GetMapping("/ingredients/{name}")
    String ingredient(@PathVariable String name, Model model) {
        model.addAttribute("substance", SubstanceSummary.of(Asked.substance(name)));
        return "ingredient";
    }
}
