package plumbrow.app.desk.figures;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.app.desk.Asked;
import plumbrow.science.figure.Figure;

/** The list of figures, and each as a form. */
@Controller
public class FiguresPage {
    @GetMapping("/figures")
    String list(@RequestParam(name = "q", defaultValue = "") String asked, Model model) {
        model.addAttribute("index", FigureIndex.of(asked));
        return "figures";
    }

    /** A figure changes nothing, so its inputs may stand in the address; long tables come by post. */
    @RequestMapping(
            path = "/figures/{id}",
            method = {RequestMethod.GET, RequestMethod.POST})
    String figure(@PathVariable String id, HttpServletRequest request, Model model) {
        Figure figure = Asked.figure(id);
        Map<String, String> typed = new LinkedHashMap<>();
        request.getParameterMap().forEach((key, values) -> {
            if (!key.equals("_csrf")) {
                typed.put(key, values[0]);
            }
        });
        model.addAttribute("form", FigureForm.of(figure, typed));
        return "figure";
    }
}
