-- Safety sheets and labels, each kept whole with what was read on it when it came. They belong to no season.
-- A blank is NULL: not read, unknown.
CREATE TABLE paper (
    number       INTEGER NOT NULL PRIMARY KEY,
    sha256       TEXT    NOT NULL UNIQUE CHECK (length(sha256) = 64),
    kind         TEXT    NOT NULL CHECK (kind IN ('safety sheet', 'label', 'paper of unknown kind')),
    file_name    TEXT    NOT NULL,
    product      TEXT,
    registration TEXT,
    dated        TEXT,
    pages        INTEGER NOT NULL,
    needs_typing INTEGER NOT NULL CHECK (needs_typing IN (0, 1)),
    added_at     TEXT    NOT NULL,
    content      BLOB    NOT NULL
) STRICT;

-- What somebody typed from a page that can't be read by the machine. Only ever added to: the last word on a thing counts.
CREATE TABLE paper_typed (
    number       INTEGER NOT NULL PRIMARY KEY,
    paper        INTEGER NOT NULL REFERENCES paper,
    page         INTEGER NOT NULL,
    about        TEXT    NOT NULL,
    value        TEXT    NOT NULL,
    who          TEXT    NOT NULL,
    typed_at     TEXT    NOT NULL
) STRICT;

CREATE TRIGGER typed_is_not_changed BEFORE UPDATE ON paper_typed
BEGIN
    SELECT RAISE(ABORT, 'what was typed from a paper stays as it was');
END;

CREATE TRIGGER typed_is_not_removed BEFORE DELETE ON paper_typed
BEGIN
    SELECT RAISE(ABORT, 'what was typed from a paper stays as it was');
END;
