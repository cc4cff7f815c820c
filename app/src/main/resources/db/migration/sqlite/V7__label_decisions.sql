-- What a person decided about a value of a label, held against its page. Only ever added to: of several about the same value
-- the last counts. The label is known by its checksum, so that another revision is another label.
CREATE TABLE label_decision (
    number     INTEGER NOT NULL PRIMARY KEY,
    sha256     TEXT    NOT NULL REFERENCES paper (sha256),
    shelf      TEXT    NOT NULL,
    row_key    TEXT    NOT NULL,
    nth        INTEGER NOT NULL CHECK (nth >= 1),
    property   TEXT    NOT NULL,
    verdict    TEXT    NOT NULL
        CHECK (verdict IN ('confirmed', 'corrected', 'rejected', 'workbook kept', 'taken back')),
    value      TEXT,
    instead_of TEXT,
    page       INTEGER,
    words      TEXT,
    who        TEXT    NOT NULL,
    decided_at TEXT    NOT NULL,
    CHECK ((value IS NOT NULL) = (verdict IN ('confirmed', 'corrected')))
) STRICT;

CREATE TRIGGER label_decision_is_not_changed BEFORE UPDATE ON label_decision
BEGIN
    SELECT RAISE(ABORT, 'what was decided about a label stays as it was');
END;

CREATE TRIGGER label_decision_is_not_removed BEFORE DELETE ON label_decision
BEGIN
    SELECT RAISE(ABORT, 'what was decided about a label stays as it was');
END;
