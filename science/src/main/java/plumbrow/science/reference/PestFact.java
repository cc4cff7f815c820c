package plumbrow.science.reference;

/**
 * One value of one weed or insect in one crop.
 *
 * @param crop "any" where the source binds it to none
 */
public record PestFact(String pest, String crop, Fact fact) implements Entry {
    @Override
    public String about() {
        return pest + " in " + crop + ", " + fact.about();
    }

    @Override
    public String says() {
        return fact.value().printed();
    }

    @Override
    public Origin origin() {
        return fact.origin();
    }

    @Override
    public Backing backing() {
        return fact.backing();
    }

    @Override
    public int row() {
        return fact.row();
    }
}
