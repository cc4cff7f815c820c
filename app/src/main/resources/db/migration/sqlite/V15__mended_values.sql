-- What stands clearly on a label as it was last read, so that what it proposes is known without reading the file again. No
-- record: another reading takes its place.
CREATE TABLE label_reading (
    sha256     TEXT    NOT NULL REFERENCES paper (sha256),
    place      INTEGER NOT NULL,
    shelf      TEXT    NOT NULL,
    row_key    TEXT    NOT NULL,
    nth        INTEGER NOT NULL CHECK (nth >= 1),
    property   TEXT    NOT NULL,
    value      TEXT    NOT NULL,
    page       INTEGER,
    PRIMARY KEY (sha256, place)
) STRICT, WITHOUT ROWID;

-- What a person put right on a paper that was read: a value as he found it beside its page, with the reading it stands for.
-- Only ever added to: of several about the same reading the last counts.
CREATE TABLE paper_mend (
    number     INTEGER NOT NULL PRIMARY KEY,
    sha256     TEXT    NOT NULL REFERENCES paper (sha256),
    about      TEXT    NOT NULL,
    verdict    TEXT    NOT NULL
        CHECK (verdict IN ('confirmed', 'typed over', 'added', 'struck', 'taken back')),
    was        TEXT,
    words      TEXT,
    page       INTEGER,
    value      TEXT,
    who        TEXT    NOT NULL,
    mended_at  TEXT    NOT NULL,
    CHECK ((value IS NOT NULL) = (verdict IN ('typed over', 'added')))
) STRICT;

CREATE TRIGGER paper_mend_is_not_changed BEFORE UPDATE ON paper_mend
BEGIN
    SELECT RAISE(ABORT, 'what was put right on a paper stays as it was');
END;

CREATE TRIGGER paper_mend_is_not_removed BEFORE DELETE ON paper_mend
BEGIN
    SELECT RAISE(ABORT, 'what was put right on a paper stays as it was');
END;

CREATE TRIGGER paper_mend_is_not_replaced BEFORE INSERT ON paper_mend
WHEN EXISTS (SELECT 1 FROM paper_mend WHERE number = NEW.number)
BEGIN
    SELECT RAISE(ABORT, 'what was put right on a paper stays as it was');
END;
