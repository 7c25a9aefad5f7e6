"""The tables of a meeting place on PostgreSQL, who may read and write which row, and the migrations.

The server holds the rows of the log as desks have them, and beside each the desk that brought it, and its place: a
number that grows, by which a desk asks for what is new. Whoever is no desk finds nothing. The rules stand in the
server (row-level security, PostgreSQL manual 5.9), so that a desk with a program of its own is held to them too:

- A reader sees what is open to the family; a teller's desk that, and what it brought; a keeper all.
- A reader writes nothing. A teller's desk adds acts and rows by the names that it was admitted with, and no others.
- Nobody changes or deletes a row: what must change does so through the functions here, which ask who calls.
- What is open is told by the desk that brings it, as the collection decides it for a parcel to the family, and put
  right by a keeper's. Words that are the keeper's by their own audience are never open.
- A tombstone takes its row out, and no such row comes again. A teller's desk takes out only what it brought with all
  earlier and later forms; what others told is hidden then, and stands until a keeper strikes it or refuses to.
- Over a network without encryption nobody is a desk.

All writing is done one desk after the other (`enter`), so that places come in the order in which rows can be seen.
"""

STRUCK_LINE = "struck"

_LOCK = 0x426F784C
"""The number of the lock that a desk holds while it writes: “BoxL”."""

_TABLES = """
CREATE SCHEMA boxlore;
CREATE TABLE boxlore.about (name text PRIMARY KEY, value text NOT NULL);
CREATE SEQUENCE boxlore.places;
CREATE TABLE boxlore.desk (
    role text PRIMARY KEY, rights text NOT NULL CHECK (rights IN ('reader', 'desk', 'keeper')), names text[] NOT NULL);
"""

_WHO = f"""
CREATE FUNCTION boxlore.is_safe() RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog AS
$$ SELECT inet_client_addr() IS NULL OR inet_client_addr() <<= '127.0.0.0/8' OR inet_client_addr() = '::1'
   OR coalesce((SELECT ssl FROM pg_stat_ssl WHERE pid = pg_backend_pid()), false) $$;
CREATE FUNCTION boxlore.rights() RETURNS text LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog AS
$$ SELECT rights FROM boxlore.desk WHERE role = session_user AND boxlore.is_safe() $$;
CREATE FUNCTION boxlore.names() RETURNS text[] LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog AS
$$ SELECT names FROM boxlore.desk WHERE role = session_user $$;
CREATE FUNCTION boxlore.next_place() RETURNS bigint LANGUAGE sql VOLATILE SECURITY DEFINER SET search_path = pg_catalog
AS $$ SELECT nextval('boxlore.places') $$;
CREATE FUNCTION boxlore.last_place() RETURNS bigint LANGUAGE sql VOLATILE SECURITY DEFINER SET search_path = pg_catalog
AS $$ SELECT last_value FROM boxlore.places $$;
CREATE FUNCTION boxlore.enter() RETURNS void LANGUAGE sql VOLATILE SET search_path = pg_catalog
AS $$ SELECT pg_advisory_xact_lock({_LOCK}) $$;
CREATE FUNCTION boxlore.one_by_one() RETURNS trigger LANGUAGE plpgsql SET search_path = pg_catalog
AS $$ BEGIN PERFORM boxlore.enter(); RETURN NULL; END $$;
"""

_ROW = "desk text NOT NULL DEFAULT session_user, place bigint NOT NULL DEFAULT boxlore.next_place()"

_LOG = f"""
CREATE TABLE boxlore.act (id text PRIMARY KEY, recorded_at text NOT NULL, by text NOT NULL, {_ROW});
CREATE TABLE boxlore.line (act text PRIMARY KEY, what text NOT NULL, open boolean NOT NULL DEFAULT false, {_ROW});
CREATE TABLE boxlore.statement (
    id text PRIMARY KEY, act text NOT NULL, subject_kind text NOT NULL, subject text NOT NULL, field text NOT NULL,
    words text NOT NULL, language text NOT NULL, said text NOT NULL, source text NOT NULL, sure text NOT NULL,
    audience text NOT NULL, sitting text NOT NULL, moment bigint, recorded_at text NOT NULL, by text NOT NULL,
    replaces text NOT NULL, sum bytea, open boolean NOT NULL DEFAULT false, wished boolean NOT NULL DEFAULT false,
    {_ROW}, CHECK (NOT open OR audience <> 'keeper'));
CREATE INDEX ON boxlore.statement (replaces) WHERE replaces <> '';
CREATE TABLE boxlore.reading (
    statement text NOT NULL, act text NOT NULL, kind text NOT NULL, value text NOT NULL, reader text NOT NULL,
    settings text NOT NULL, asks bigint NOT NULL, confirmed bigint NOT NULL, recorded_at text NOT NULL, sum bytea,
    {_ROW}, PRIMARY KEY (statement, act));
CREATE TABLE boxlore.settlement (
    id text PRIMARY KEY, act text NOT NULL, subject_kind text NOT NULL, subject text NOT NULL, field text NOT NULL,
    outcome text NOT NULL, chosen text NOT NULL, recorded_at text NOT NULL, by text NOT NULL, sum bytea,
    open boolean NOT NULL DEFAULT false, {_ROW});
CREATE TABLE boxlore.weighed (settlement text NOT NULL, statement text NOT NULL, {_ROW},
    PRIMARY KEY (settlement, statement));
CREATE TABLE boxlore.withdrawal (act text NOT NULL, withdraws text NOT NULL, {_ROW}, PRIMARY KEY (withdraws, act));
CREATE TABLE boxlore.tombstone (
    statement text PRIMARY KEY, subject_kind text NOT NULL, subject text NOT NULL, field text NOT NULL,
    struck_at text NOT NULL, by text NOT NULL, state text NOT NULL DEFAULT 'asked'
    CHECK (state IN ('done', 'asked', 'refused')), {_ROW});
CREATE TABLE boxlore.given (series text PRIMARY KEY, count bigint NOT NULL, {_ROW});
CREATE TABLE boxlore.out_now (role text PRIMARY KEY, by text NOT NULL, item text NOT NULL,
    at timestamptz NOT NULL DEFAULT now());
"""

LOG_TABLES = ("act", "line", "statement", "reading", "settlement", "weighed", "withdrawal", "tombstone", "given")

_ORDER = "".join(
    f"CREATE INDEX ON boxlore.{table} (place);"
    f"CREATE TRIGGER one_by_one BEFORE INSERT OR UPDATE OR DELETE ON boxlore.{table} "
    "FOR EACH STATEMENT EXECUTE FUNCTION boxlore.one_by_one();"
    for table in LOG_TABLES
)

_STRIKES = f"""
CREATE FUNCTION boxlore.quiet_touched(touched text[]) RETURNS void LANGUAGE sql SECURITY DEFINER
SET search_path = pg_catalog AS $$
    WITH RECURSIVE acts (act) AS (
        SELECT act FROM boxlore.statement WHERE id = ANY(touched)
        UNION SELECT act FROM boxlore.reading WHERE statement = ANY(touched)
        UNION SELECT w.act FROM boxlore.withdrawal w JOIN acts a ON w.withdraws = a.act)
    UPDATE boxlore.line SET what = '{STRUCK_LINE}', place = boxlore.next_place()
    WHERE act IN (SELECT act FROM acts) AND what <> '{STRUCK_LINE}' $$;
REVOKE ALL ON FUNCTION boxlore.quiet_touched(text[]) FROM PUBLIC;
CREATE FUNCTION boxlore.forms(first text) RETURNS text[] LANGUAGE sql STABLE SECURITY DEFINER
SET search_path = pg_catalog AS $$
    WITH RECURSIVE form (id) AS (
        SELECT first UNION SELECT CASE WHEN s.id = f.id THEN s.replaces ELSE s.id END FROM form f
        JOIN boxlore.statement s ON (s.id = f.id AND s.replaces <> '') OR s.replaces = f.id)
    SELECT array_agg(id) FROM form $$;
REVOKE ALL ON FUNCTION boxlore.forms(text) FROM PUBLIC;
CREATE FUNCTION boxlore.take_out(gone text) RETURNS void LANGUAGE plpgsql SECURITY DEFINER
SET search_path = pg_catalog AS $$ BEGIN
    PERFORM boxlore.quiet_touched(ARRAY[gone]);
    DELETE FROM boxlore.reading WHERE statement = gone;
    DELETE FROM boxlore.statement WHERE id = gone;
END $$;
REVOKE ALL ON FUNCTION boxlore.take_out(text) FROM PUBLIC;
CREATE FUNCTION boxlore.buried() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog AS $$
DECLARE every_form text[] := boxlore.forms(NEW.statement);
BEGIN
    IF EXISTS (SELECT 1 FROM boxlore.tombstone t WHERE t.statement = NEW.statement) THEN
        IF boxlore.rights() = 'keeper' THEN
            PERFORM boxlore.answer(true, ARRAY[NEW.statement]);
        END IF;
        RETURN NULL;
    END IF;
    IF boxlore.rights() = 'keeper' OR NOT EXISTS (
        SELECT 1 FROM boxlore.statement s WHERE s.id = ANY(every_form) AND s.desk <> session_user) THEN
        NEW.state := 'done';
        PERFORM boxlore.take_out(NEW.statement);
    ELSE
        NEW.state := 'asked';
        UPDATE boxlore.statement SET wished = true WHERE id = ANY(every_form);
    END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER buried BEFORE INSERT ON boxlore.tombstone FOR EACH ROW EXECUTE FUNCTION boxlore.buried();
CREATE FUNCTION boxlore.stays_out() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog AS $$
BEGIN
    IF EXISTS (SELECT 1 FROM boxlore.tombstone WHERE state = 'done' AND statement IN (NEW.id, NEW.replaces)) THEN
        RETURN NULL;
    END IF;
    NEW.open := NEW.open AND NEW.audience <> 'keeper';
    RETURN NEW;
END $$;
CREATE TRIGGER stays_out BEFORE INSERT ON boxlore.statement FOR EACH ROW EXECUTE FUNCTION boxlore.stays_out();
"""

_CHANGES = f"""
CREATE FUNCTION boxlore.quiet(acts text[]) RETURNS void LANGUAGE plpgsql SECURITY DEFINER
SET search_path = pg_catalog AS $$ BEGIN
    UPDATE boxlore.line SET what = '{STRUCK_LINE}', place = boxlore.next_place()
    WHERE act = ANY(acts) AND what <> '{STRUCK_LINE}'
    AND (boxlore.rights() = 'keeper' OR (boxlore.rights() = 'desk' AND desk = session_user));
END $$;
CREATE FUNCTION boxlore.mark(is_open boolean, rows text[], lines text[], settled text[]) RETURNS void LANGUAGE plpgsql
SECURITY DEFINER SET search_path = pg_catalog AS $$ BEGIN
    IF boxlore.rights() IS DISTINCT FROM 'keeper' THEN
        RAISE EXCEPTION 'only a keeper says what is open' USING ERRCODE = 'insufficient_privilege';
    END IF;
    UPDATE boxlore.reading SET place = boxlore.next_place() WHERE is_open AND statement = ANY(rows);
    UPDATE boxlore.statement SET open = is_open AND audience <> 'keeper', place = boxlore.next_place()
    WHERE id = ANY(rows);
    UPDATE boxlore.line SET open = is_open, place = boxlore.next_place() WHERE act = ANY(lines);
    UPDATE boxlore.weighed SET place = boxlore.next_place() WHERE is_open AND settlement = ANY(settled);
    UPDATE boxlore.settlement SET open = is_open, place = boxlore.next_place() WHERE id = ANY(settled);
END $$;
CREATE FUNCTION boxlore.answer(is_struck boolean, wishes text[]) RETURNS void LANGUAGE plpgsql
SECURITY DEFINER SET search_path = pg_catalog AS $$ DECLARE one text; BEGIN
    IF boxlore.rights() IS DISTINCT FROM 'keeper' THEN
        RAISE EXCEPTION 'only a keeper answers wishes' USING ERRCODE = 'insufficient_privilege';
    END IF;
    FOREACH one IN ARRAY wishes LOOP
        IF is_struck THEN
            PERFORM boxlore.take_out(one);
            UPDATE boxlore.tombstone SET state = 'done', place = boxlore.next_place()
            WHERE statement = one AND state <> 'done';
        ELSE
            UPDATE boxlore.tombstone SET state = 'refused' WHERE statement = one AND state = 'asked';
            UPDATE boxlore.statement SET wished = false, place = boxlore.next_place()
            WHERE id = ANY(boxlore.forms(one));
            UPDATE boxlore.reading SET place = boxlore.next_place() WHERE statement = ANY(boxlore.forms(one));
        END IF;
    END LOOP;
END $$;
CREATE FUNCTION boxlore.give(letters text, highest bigint) RETURNS void LANGUAGE plpgsql SECURITY DEFINER
SET search_path = pg_catalog AS $$ BEGIN
    IF boxlore.rights() IN ('desk', 'keeper') AND highest BETWEEN 0 AND 9999999 THEN
        INSERT INTO boxlore.given (series, count) VALUES (letters, highest)
        ON CONFLICT (series) DO UPDATE SET count = excluded.count, place = boxlore.next_place()
        WHERE boxlore.given.count < excluded.count;
    END IF;
END $$;
CREATE FUNCTION boxlore.have_out(thing text, who text) RETURNS void LANGUAGE plpgsql SECURITY DEFINER
SET search_path = pg_catalog AS $$ BEGIN
    IF boxlore.rights() = 'keeper' OR (boxlore.rights() = 'desk' AND who = ANY(boxlore.names())) THEN
        INSERT INTO boxlore.out_now (role, by, item) VALUES (session_user, who, thing)
        ON CONFLICT (role) DO UPDATE SET by = excluded.by, item = excluded.item, at = now();
    END IF;
END $$;
"""

_RIGHTS = "(SELECT boxlore.rights())"
_OWN = "desk = session_user"
_KEEPER = f"{_RIGHTS} = 'keeper'"
_OWN_NAME = f"({_KEEPER} OR ({_RIGHTS} = 'desk' AND by = ANY((SELECT boxlore.names())::text[])))"
_OWN_ACT = (
    f"({_KEEPER} OR ({_RIGHTS} = 'desk' AND EXISTS (SELECT 1 FROM boxlore.act a WHERE a.id = act "
    "AND a.by = ANY((SELECT boxlore.names())::text[]))))"
)
_ANY_DESK = f"{_RIGHTS} IS NOT NULL"

_SEEN = {
    "act": _ANY_DESK,
    "line": f"{_KEEPER} OR ({_ANY_DESK} AND (open OR {_OWN}))",
    "statement": f"{_KEEPER} OR ({_ANY_DESK} AND ((open AND NOT wished) OR {_OWN}))",
    "reading": f"{_KEEPER} OR ({_ANY_DESK} AND ({_OWN} OR statement IN (SELECT id FROM boxlore.statement)))",
    "settlement": f"{_KEEPER} OR ({_ANY_DESK} AND (open OR {_OWN}))",
    "weighed": f"{_KEEPER} OR ({_ANY_DESK} AND ({_OWN} OR settlement IN (SELECT id FROM boxlore.settlement)))",
    "withdrawal": _ANY_DESK,
    "tombstone": f"{_KEEPER} OR ({_ANY_DESK} AND (state = 'done' OR {_OWN}))",
    "given": _ANY_DESK,
    "out_now": _ANY_DESK,
    "desk": _ANY_DESK,
    "about": _ANY_DESK,
}
"""Which rows of each table whoever asks is shown."""

_ADDED = {
    "act": _OWN_NAME,
    "line": _OWN_ACT,
    "statement": f"{_OWN_NAME} AND {_OWN_ACT}",
    "reading": _OWN_ACT,
    "settlement": f"{_OWN_NAME} AND {_OWN_ACT}",
    "weighed": (
        f"({_KEEPER} OR ({_RIGHTS} = 'desk' AND EXISTS "
        f"(SELECT 1 FROM boxlore.settlement s WHERE s.id = settlement AND s.{_OWN})))"
    ),
    "withdrawal": _OWN_ACT,
    "tombstone": _OWN_NAME,
}
"""Which rows of each table whoever asks may add."""

ACT = ("id", "recorded_at", "by")
LINE = ("act", "what", "open")
STATEMENT = tuple(
    "id act subject_kind subject field words language said source sure audience sitting moment recorded_at by replaces "
    "sum".split()
)
READING = tuple("statement act kind value reader settings asks confirmed recorded_at sum".split())
SETTLEMENT = tuple("id act subject_kind subject field outcome chosen recorded_at by sum".split())
TOMBSTONE = tuple("statement subject_kind subject field struck_at by".split())

WRITTEN = {
    "act": ACT, "line": LINE, "statement": (*STATEMENT, "open"), "reading": READING,
    "settlement": (*SETTLEMENT, "open"), "weighed": ("settlement", "statement"), "withdrawal": ("act", "withdraws"),
    "tombstone": TOMBSTONE,
}  # fmt: skip
"""The columns that a desk writes; which desk, and the place, the server notes itself."""

_READ_AGAIN = ("kind", "value", "reader", "settings", "asks", "confirmed", "recorded_at", "sum", "place")

_POLICIES = "".join(
    [f"ALTER TABLE boxlore.{table} ENABLE ROW LEVEL SECURITY;" for table in _SEEN]
    + [f"CREATE POLICY seen ON boxlore.{table} FOR SELECT USING ({rule});" for table, rule in _SEEN.items()]
    + [f"CREATE POLICY added ON boxlore.{table} FOR INSERT WITH CHECK ({rule});" for table, rule in _ADDED.items()]
    + [
        f"CREATE POLICY again ON boxlore.reading FOR UPDATE USING ({_OWN} OR {_KEEPER}) WITH CHECK ({_OWN_ACT});",
        "REVOKE ALL ON SCHEMA boxlore FROM PUBLIC;",
    ]
)

_ONLY_WHAT_IT_BROUGHT = """
CREATE OR REPLACE FUNCTION boxlore.buried() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER
SET search_path = pg_catalog AS $$
DECLARE every_form text[] := boxlore.forms(NEW.statement);
BEGIN
    IF EXISTS (SELECT 1 FROM boxlore.tombstone t WHERE t.statement = NEW.statement) THEN
        IF boxlore.rights() = 'keeper' THEN
            PERFORM boxlore.answer(true, ARRAY[NEW.statement]);
        END IF;
        RETURN NULL;
    END IF;
    IF boxlore.rights() = 'keeper' OR (
        EXISTS (SELECT 1 FROM boxlore.statement s WHERE s.id = NEW.statement) AND NOT EXISTS (
        SELECT 1 FROM boxlore.statement s WHERE s.id = ANY(every_form) AND s.desk <> session_user)) THEN
        NEW.state := 'done';
        PERFORM boxlore.take_out(NEW.statement);
    ELSE
        NEW.state := 'asked';
        UPDATE boxlore.statement SET wished = true WHERE id = ANY(every_form);
    END IF;
    RETURN NEW;
END $$;
CREATE OR REPLACE FUNCTION boxlore.stays_out() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER
SET search_path = pg_catalog AS $$ BEGIN
    IF EXISTS (SELECT 1 FROM boxlore.tombstone WHERE state = 'done' AND statement IN (NEW.id, NEW.replaces)) THEN
        RETURN NULL;
    END IF;
    NEW.open := NEW.open AND NEW.audience <> 'keeper';
    NEW.wished := EXISTS (
        SELECT 1 FROM boxlore.tombstone WHERE state = 'asked' AND statement IN (NEW.id, NEW.replaces));
    RETURN NEW;
END $$;
"""
"""A desk strikes only what it brought itself: what is not there yet may be another's. What was wished struck before it
came is hidden when it comes."""

MIGRATIONS: tuple[str, ...] = (
    _TABLES + _WHO + _LOG + _ORDER + _STRIKES + _CHANGES + _POLICIES,
    _ONLY_WHAT_IT_BROUGHT,
)
"""Script n brings a meeting place from version n to n + 1. Add new ones at the end, and never change one."""

VERSION = len(MIGRATIONS)


def grants(rights: str, role: str) -> list[str]:
    """What a desk (its role, quoted) is granted beside what the rules above let it see and add."""
    words = [
        f"REVOKE ALL ON ALL TABLES IN SCHEMA boxlore FROM {role}",
        f"GRANT USAGE ON SCHEMA boxlore TO {role}",
        f"GRANT SELECT ON ALL TABLES IN SCHEMA boxlore TO {role}",
    ]
    if rights != "reader":
        words += [
            f"GRANT INSERT ({', '.join(columns)}) ON boxlore.{table} TO {role}" for table, columns in WRITTEN.items()
        ]
        words.append(f"GRANT UPDATE ({', '.join(_READ_AGAIN)}) ON boxlore.reading TO {role}")
    return words
