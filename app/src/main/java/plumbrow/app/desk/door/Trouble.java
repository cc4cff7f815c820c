package plumbrow.app.desk.door;

import org.springframework.http.HttpStatus;

/**
 * Why a page can't be shown, and what to do about it.
 *
 * @param status the code the browser gets
 */
public record Trouble(int status, String title, String says, String whatToDo) {
    /** Whether typical values could stand in for what is lacking. */
    public boolean typicalCouldStand() {
        return says.contains("the assumptions have no ");
    }

    static Trouble notHere(String sentence) {
        return new Trouble(
                HttpStatus.NOT_FOUND.value(), "Not in this book", sentence, "Look for it among the season's fields.");
    }

    static Trouble gap(String sentence) {
        return new Trouble(
                HttpStatus.UNPROCESSABLE_CONTENT.value(),
                "The season lacks something",
                sentence,
                "Enter it on the screen, or add it to the workbook and bring the workbook in again.");
    }

    static Trouble tooMany(String sentence) {
        return new Trouble(
                HttpStatus.UNPROCESSABLE_CONTENT.value(), "Too much for one go", sentence, "Begin with the season.");
    }

    static Trouble book(String sentence) {
        return new Trouble(
                HttpStatus.SERVICE_UNAVAILABLE.value(),
                "The book can't be used just now",
                sentence,
                "Nothing was recorded. See that the book's file is where it was and may be read and written, then try"
                        + " again.");
    }

    static Trouble meanwhile(String sentence) {
        return new Trouble(
                HttpStatus.CONFLICT.value(),
                "Somebody else changed the book",
                sentence,
                "Look at it as it is now, then do it once more if it still fits.");
    }

    static Trouble tooMuch() {
        return new Trouble(
                HttpStatus.CONTENT_TOO_LARGE.value(),
                "Too much at once",
                "The files are larger, or more, than the desk takes in one go. None of them was taken in.",
                "Send fewer at once; a safety sheet or label of more than 32 MB is not taken at all. A whole folder goes in"
                        + " with: plumbrow papers add FOLDER");
    }

    static Trouble file(String sentence) {
        return new Trouble(
                HttpStatus.INTERNAL_SERVER_ERROR.value(),
                "The paper could not be made",
                sentence,
                "See that this machine has room left, then try again.");
    }

    static Trouble of(int status) {
        if (status == HttpStatus.CONTENT_TOO_LARGE.value()) {
            return tooMuch();
        }
        if (status == HttpStatus.REQUEST_TIMEOUT.value()) {
            return new Trouble(
                    status, "It took too long", Body.tooSlow().sentence(), "Send it again, fewer files at once.");
        }
        if (status == HttpStatus.FORBIDDEN.value()) {
            return new Trouble(
                    status,
                    "Not recorded",
                    "This form was opened too long ago, or by another page. Nothing was recorded.",
                    "Go back in the browser: what you typed is still there. Load the page anew and send it again.");
        }
        if (status == HttpStatus.NOT_FOUND.value()) {
            return new Trouble(
                    status, "No such page", "The desk has no page under this address.", "Begin with the season.");
        }
        if (status >= 400 && status < 500) {
            return new Trouble(
                    status,
                    "The desk can't read this",
                    "The browser sent something the desk doesn't understand. Nothing was recorded.",
                    "Go back and try again, or begin with the season.");
        }
        return new Trouble(
                HttpStatus.INTERNAL_SERVER_ERROR.value(),
                "Something went wrong in Plumbrow",
                "This is a fault of Plumbrow, not yours. The book was not changed.",
                "Try again. If it comes back, tell whoever keeps Plumbrow for you; its log has the details.");
    }
}
