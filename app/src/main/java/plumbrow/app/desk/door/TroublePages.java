package plumbrow.app.desk.door;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.apache.catalina.connector.ClientAbortException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.multipart.MultipartException;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.app.book.BookException;
import plumbrow.app.book.MeanwhileException;
import plumbrow.documents.FileTrouble;

/** What is said when a page can't be shown. The log has the details once; the person gets a sentence. */
@Controller
@ControllerAdvice
public class TroublePages implements ErrorController {
    private static final Logger LOG = LoggerFactory.getLogger(TroublePages.class);

    @ExceptionHandler(NotHereException.class)
    String notHere(NotHereException fault, Model model, HttpServletResponse response) {
        return page(Trouble.notHere(sentence(fault)), model, response);
    }

    @ExceptionHandler(SeasonGapException.class)
    String gap(SeasonGapException fault, Model model, HttpServletResponse response) {
        return page(Trouble.gap(sentence(fault)), model, response);
    }

    @ExceptionHandler(TooManyException.class)
    String tooMany(TooManyException fault, Model model, HttpServletResponse response) {
        return page(Trouble.tooMany(sentence(fault)), model, response);
    }

    @ExceptionHandler(NoSeasonException.class)
    String noSeason() {
        return "redirect:/";
    }

    @ExceptionHandler(BookException.class)
    String book(BookException fault, Model model, HttpServletResponse response) {
        return page(Trouble.book(sentence(fault)), model, response);
    }

    @ExceptionHandler(MeanwhileException.class)
    String meanwhile(MeanwhileException fault, Model model, HttpServletResponse response) {
        return page(Trouble.meanwhile(sentence(fault)), model, response);
    }

    @ExceptionHandler(MultipartException.class)
    String tooMuch(MultipartException fault, Model model, HttpServletResponse response) {
        return page(
                outOfRoom(fault)
                        ? Trouble.file("This machine's disk is full; none of the files was taken in.")
                        : Trouble.tooMuch(),
                model,
                response);
    }

    private static boolean outOfRoom(Throwable fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof IOException
                    && String.valueOf(cause.getMessage()).contains("No space left")) {
                return true;
            }
        }
        return false;
    }

    @ExceptionHandler(FileTrouble.class)
    String file(FileTrouble fault, Model model, HttpServletResponse response) {
        return page(Trouble.file(sentence(fault)), model, response);
    }

    @RequestMapping("${server.error.path:${error.path:/error}}")
    String other(HttpServletRequest request, Model model, HttpServletResponse response) {
        Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        int status = code instanceof Integer number ? number : HttpStatus.NOT_FOUND.value();
        if (request.getAttribute(RequestDispatcher.ERROR_EXCEPTION) instanceof Throwable fault && ours(status, fault)) {
            LOG.error("A page could not be shown", fault);
        }
        return page(Trouble.of(status), model, response);
    }

    /** What the other side sent wrong, or did not wait for, is no fault of Plumbrow and leaves nothing in its log. */
    private static boolean ours(int status, Throwable fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof ClientAbortException) {
                return false;
            }
        }
        return status >= HttpStatus.INTERNAL_SERVER_ERROR.value();
    }

    private static String page(Trouble trouble, Model model, HttpServletResponse response) {
        response.setStatus(trouble.status());
        model.addAttribute("trouble", trouble);
        return "trouble";
    }

    private static String sentence(RuntimeException fault) {
        String message = fault.getMessage();
        return message == null ? "" : message;
    }
}
