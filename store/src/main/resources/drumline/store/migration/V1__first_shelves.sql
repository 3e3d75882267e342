-- Times are milliseconds since 1970-01-01 UTC. Money and readings are text, so that no digit is lost.
-- Revisions, plans, readings and the audit trail are only ever added to.

CREATE TABLE inquiry (
  id ${identity},
  head INTEGER NOT NULL,
  created_at_ms BIGINT NOT NULL,
  copied_from BIGINT REFERENCES inquiry (id),
  standing TEXT NOT NULL,
  summary_revision INTEGER,
  summary ${json},
  found_by TEXT NOT NULL DEFAULT ''
);

CREATE TABLE inquiry_revision (
  owner BIGINT NOT NULL REFERENCES inquiry (id),
  revision INTEGER NOT NULL,
  name TEXT NOT NULL,
  kind TEXT NOT NULL,
  who TEXT NOT NULL,
  at_ms BIGINT NOT NULL,
  what TEXT NOT NULL,
  same_as INTEGER NOT NULL,
  undo_to INTEGER,
  redo_to INTEGER,
  text TEXT NOT NULL,
  PRIMARY KEY (owner, revision)
);

CREATE TABLE library (
  id ${identity},
  head INTEGER NOT NULL,
  created_at_ms BIGINT NOT NULL,
  copied_from BIGINT REFERENCES library (id),
  standing TEXT NOT NULL,
  kind TEXT NOT NULL
);

CREATE TABLE library_revision (
  owner BIGINT NOT NULL REFERENCES library (id),
  revision INTEGER NOT NULL,
  name TEXT NOT NULL,
  kind TEXT NOT NULL,
  who TEXT NOT NULL,
  at_ms BIGINT NOT NULL,
  what TEXT NOT NULL,
  same_as INTEGER NOT NULL,
  undo_to INTEGER,
  redo_to INTEGER,
  text TEXT NOT NULL,
  PRIMARY KEY (owner, revision)
);

CREATE TABLE plan (
  id ${identity},
  inquiry BIGINT NOT NULL,
  revision INTEGER NOT NULL,
  machine TEXT NOT NULL,
  seed BIGINT NOT NULL,
  search_s DOUBLE PRECISION NOT NULL,
  verdict TEXT NOT NULL,
  cycle_s DOUBLE PRECISION,
  bound_s DOUBLE PRECISION,
  piece_cost TEXT,
  currency TEXT,
  who TEXT NOT NULL,
  at_ms BIGINT NOT NULL,
  plan_json TEXT NOT NULL,
  study_content TEXT,
  FOREIGN KEY (inquiry, revision) REFERENCES inquiry_revision (owner, revision)
);

CREATE INDEX plan_of_inquiry ON plan (inquiry, id);

CREATE TABLE runoff (
  id ${identity},
  inquiry BIGINT NOT NULL,
  revision INTEGER NOT NULL,
  machine TEXT NOT NULL,
  title TEXT NOT NULL,
  who TEXT NOT NULL,
  at_ms BIGINT NOT NULL,
  standing TEXT NOT NULL,
  FOREIGN KEY (inquiry, revision) REFERENCES inquiry_revision (owner, revision)
);

CREATE INDEX runoff_of_inquiry ON runoff (inquiry, id);

CREATE TABLE measurement (
  runoff BIGINT NOT NULL REFERENCES runoff (id),
  line INTEGER NOT NULL,
  characteristic TEXT NOT NULL,
  spindle INTEGER NOT NULL,
  piece INTEGER NOT NULL,
  reading TEXT NOT NULL,
  unit TEXT NOT NULL,
  PRIMARY KEY (runoff, line),
  UNIQUE (runoff, characteristic, spindle, piece)
);

CREATE TABLE account (
  id ${identity},
  name TEXT NOT NULL,
  folded_name TEXT NOT NULL UNIQUE,
  password_hash TEXT NOT NULL,
  role TEXT NOT NULL,
  access TEXT NOT NULL,
  created_at_ms BIGINT NOT NULL
);

CREATE TABLE audit_line (
  id ${identity},
  at_ms BIGINT NOT NULL,
  who TEXT NOT NULL,
  what TEXT NOT NULL,
  subject TEXT NOT NULL,
  note TEXT NOT NULL
);

CREATE INDEX audit_line_of_subject ON audit_line (subject, id);
