-- What was written down for good hangs together: each entry (a line of the log, a strike, a choice, a paper, a value typed or
-- decided) has a link whose hash goes over its words and the hash of the link before it. docs/book.md says how.
CREATE TABLE chain (
    number     INTEGER NOT NULL PRIMARY KEY,
    kind       TEXT    NOT NULL,
    entry      INTEGER NOT NULL,
    said       TEXT    NOT NULL,
    hash       TEXT    NOT NULL CHECK (length(hash) = 64),
    UNIQUE (kind, entry)
) STRICT;

-- A row as long as the chain has not begun. SQLite knows no SHA-256: the program begins it when the book is opened.
CREATE TABLE chain_due (
    due        INTEGER NOT NULL PRIMARY KEY
) STRICT;

INSERT INTO chain_due (due) VALUES (1);

-- The checksum of each table of a season as it was put in, and of the form of the file, as of the year 0.
CREATE TABLE season_seal (
    season     INTEGER NOT NULL,
    part       TEXT    NOT NULL,
    sha256     TEXT    NOT NULL,
    PRIMARY KEY (season, part)
) STRICT, WITHOUT ROWID;

-- INSERT OR REPLACE takes a row out without asking the triggers that guard removal: a number that is taken stays taken.
CREATE TRIGGER log_line_is_not_replaced BEFORE INSERT ON log_line
WHEN EXISTS (SELECT 1 FROM log_line WHERE number = NEW.number)
BEGIN
    SELECT RAISE(ABORT, 'a line of the log once written down stays as it was');
END;

CREATE TRIGGER log_strike_is_not_replaced BEFORE INSERT ON log_strike
WHEN EXISTS (SELECT 1 FROM log_strike WHERE line = NEW.line)
BEGIN
    SELECT RAISE(ABORT, 'a line of the log once struck stays struck');
END;

CREATE TRIGGER choice_is_not_replaced BEFORE INSERT ON choice
WHEN EXISTS (SELECT 1 FROM choice WHERE number = NEW.number)
BEGIN
    SELECT RAISE(ABORT, 'a choice once written down stays as it was');
END;

CREATE TRIGGER paper_typed_is_not_replaced BEFORE INSERT ON paper_typed
WHEN EXISTS (SELECT 1 FROM paper_typed WHERE number = NEW.number)
BEGIN
    SELECT RAISE(ABORT, 'what was typed from a paper stays as it was');
END;

CREATE TRIGGER label_decision_is_not_replaced BEFORE INSERT ON label_decision
WHEN EXISTS (SELECT 1 FROM label_decision WHERE number = NEW.number)
BEGIN
    SELECT RAISE(ABORT, 'what was decided about a label stays as it was');
END;

CREATE TRIGGER paper_is_not_replaced BEFORE INSERT ON paper
WHEN EXISTS (SELECT 1 FROM paper WHERE number = NEW.number OR sha256 = NEW.sha256)
BEGIN
    SELECT RAISE(ABORT, 'a paper once kept stays as it was');
END;

CREATE TRIGGER paper_is_not_changed BEFORE UPDATE ON paper
BEGIN
    SELECT RAISE(ABORT, 'a paper once kept stays as it was');
END;

CREATE TRIGGER paper_is_not_removed BEFORE DELETE ON paper
BEGIN
    SELECT RAISE(ABORT, 'a paper once kept stays as it was');
END;

CREATE TRIGGER chain_is_not_replaced BEFORE INSERT ON chain
WHEN EXISTS (SELECT 1 FROM chain WHERE number = NEW.number OR (kind = NEW.kind AND entry = NEW.entry))
BEGIN
    SELECT RAISE(ABORT, 'a link of the chain stays as it was');
END;

CREATE TRIGGER chain_is_not_changed BEFORE UPDATE ON chain
BEGIN
    SELECT RAISE(ABORT, 'a link of the chain stays as it was');
END;

CREATE TRIGGER chain_is_not_removed BEFORE DELETE ON chain
BEGIN
    SELECT RAISE(ABORT, 'a link of the chain stays as it was');
END;
