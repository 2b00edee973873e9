-- What must never happen, forbidden by the database itself:
--   1. a change without a who and an act, or without its audit entry
--   2. a changed or removed entry of an append-only chain
--   3. two bookings of one specimen on one day
--   4. a loan line that moves outside the table of moves
--   5. a hand-over that does not begin where the one before ended
--   6. a signature under other terms than the newest version's
--   7. a sealed record read without a look being written
-- A refusal is raised as 'anatheca:<reason>', which the program turns into a sentence.

-- The application's role owns nothing. It is shared by all databases of a cluster.
DO $$
BEGIN
  BEGIN
    CREATE ROLE anatheca_app NOLOGIN;
  EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL;
  END;
  IF NOT pg_has_role(current_user, 'anatheca_app', 'MEMBER') THEN
    EXECUTE format('GRANT anatheca_app TO %I', current_user);
  END IF;
END $$;

-- 1. Audit -------------------------------------------------------------------

CREATE FUNCTION audit_change() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
  actor text := coalesce(current_setting('anatheca.actor', true), '');
  act text := coalesce(current_setting('anatheca.act', true), '');
  old_row jsonb := CASE WHEN TG_OP <> 'INSERT' THEN to_jsonb(OLD) - 'content' - 'search_key' - 'link_hash' END;
  new_row jsonb := CASE WHEN TG_OP <> 'DELETE' THEN to_jsonb(NEW) - 'content' - 'search_key' - 'link_hash' END;
  row_key text := '';
  key_column text;
BEGIN
  IF actor = '' OR act = '' THEN
    RAISE EXCEPTION 'anatheca:audit.no-actor';
  END IF;
  IF TG_OP = 'UPDATE' AND old_row = new_row THEN
    RETURN NULL;
  END IF;
  FOREACH key_column IN ARRAY TG_ARGV LOOP
    row_key := row_key || CASE WHEN row_key = '' THEN '' ELSE '/' END || (coalesce(new_row, old_row) ->> key_column);
  END LOOP;
  IF TG_TABLE_SCHEMA = 'sealed' THEN
    old_row := NULL;
    new_row := NULL;
  END IF;
  INSERT INTO audit_entry (actor, act, table_name, row_key, operation, before, after)
  VALUES (actor, act, TG_TABLE_NAME, row_key, lower(TG_OP), old_row, new_row);
  RETURN NULL;
END $$;

DO $$
DECLARE
  audited text[][] := ARRAY[
    ['public.setting', 'key'], ['public.stored_file', 'id'],
    ['public.institution', 'id'], ['public.venue', 'id'], ['public.passage', 'id'], ['public.licence', 'id'],
    ['public.account', 'id'],
    ['public.donor', 'code'], ['public.consent', 'id'], ['public.consent_answer', 'consent_id,scope'],
    ['public.specimen_donor', 'specimen_id,donor_code'], ['public.permit', 'id'], ['public.title', 'specimen_id'],
    ['sealed.donor_identity', 'donor_code'], ['sealed.donor_look', 'donor_code'],
    ['public.specimen', 'id'], ['public.component', 'id'], ['public.former_number', 'id'],
    ['public.hazard', 'specimen_id,substance'], ['public.series', 'id'], ['public.series_landmark', 'series_id,level'],
    ['public.shown', 'specimen_id,structure_id,side'], ['public.preparation_step', 'id'],
    ['public.place', 'id'], ['public.move', 'id'], ['public.custody_event', 'id'], ['public.booking', 'id'],
    ['public.condition_check', 'id'], ['public.finding', 'id'],
    ['public.crate', 'id'], ['public.crate_content', 'crate_id,specimen_id'], ['public.stage', 'id'],
    ['public.crate_event', 'id'], ['public.crate_count', 'event_id,specimen_id'],
    ['public.loan', 'id'], ['public.loan_line', 'id'], ['public.suitability_run', 'id'], ['public.decision', 'id'],
    ['public.cover', 'id'], ['public.agreement', 'id'], ['public.signature', 'id']
  ];
  entry text[];
  arguments text;
BEGIN
  FOREACH entry SLICE 1 IN ARRAY audited LOOP
    SELECT string_agg(quote_literal(part), ', ') INTO arguments FROM unnest(string_to_array(entry[2], ',')) AS part;
    EXECUTE format('CREATE TRIGGER audited AFTER INSERT OR UPDATE OR DELETE ON %s FOR EACH ROW EXECUTE FUNCTION audit_change(%s)',
                   entry[1], arguments);
  END LOOP;
END $$;

-- 2. Append-only chains ------------------------------------------------------

CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'anatheca:record.append-only' USING DETAIL = TG_TABLE_NAME;
END $$;

DO $$
DECLARE
  chain text;
BEGIN
  FOREACH chain IN ARRAY ARRAY['public.audit_entry', 'sealed.donor_look', 'public.move', 'public.custody_event',
    'public.condition_check', 'public.finding', 'public.crate_event', 'public.crate_count',
    'public.suitability_run', 'public.decision', 'public.agreement', 'public.signature']
  LOOP
    EXECUTE format('CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON %s FOR EACH ROW EXECUTE FUNCTION refuse_change()', chain);
    EXECUTE format('CREATE TRIGGER never_emptied BEFORE TRUNCATE ON %s FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()', chain);
  END LOOP;
END $$;

-- 3. Bookings ----------------------------------------------------------------

ALTER TABLE booking
  ADD CONSTRAINT booking_has_days CHECK (starts_on < ends_on),
  ADD CONSTRAINT booking_strength CHECK (strength IN ('hold', 'firm')),
  ADD CONSTRAINT booking_hold_expires CHECK (strength = 'firm' OR expires_at IS NOT NULL),
  ADD CONSTRAINT booking_never_twice EXCLUDE USING gist (specimen_id WITH =, daterange(starts_on, ends_on) WITH &&)
    WHERE (released_at IS NULL);

-- 4. Loan lines --------------------------------------------------------------

CREATE FUNCTION check_loan_line_move() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'INSERT' THEN
    IF NEW.state <> 'noted' THEN
      RAISE EXCEPTION 'anatheca:loan.line-starts-noted';
    END IF;
  ELSIF TG_OP = 'DELETE' THEN
    IF OLD.state <> 'noted' THEN
      RAISE EXCEPTION 'anatheca:loan.line-kept';
    END IF;
    RETURN OLD;
  ELSE
    IF NEW.loan_id <> OLD.loan_id OR NEW.specimen_id <> OLD.specimen_id THEN
      RAISE EXCEPTION 'anatheca:loan.line-fixed';
    END IF;
    IF NEW.state <> OLD.state AND NOT EXISTS (
      SELECT 1 FROM loan_line_move WHERE from_state = OLD.state AND to_state = NEW.state
    ) THEN
      RAISE EXCEPTION 'anatheca:loan.move-not-allowed' USING DETAIL = OLD.state || ' to ' || NEW.state;
    END IF;
  END IF;
  RETURN NEW;
END $$;

CREATE TRIGGER moves_by_the_table BEFORE INSERT OR UPDATE OR DELETE ON loan_line
  FOR EACH ROW EXECUTE FUNCTION check_loan_line_move();

-- 5. Custody -----------------------------------------------------------------

CREATE FUNCTION check_custody_chain() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  last record;
BEGIN
  SELECT sequence, to_party, handed_over_at INTO last FROM custody_event
    WHERE specimen_id = NEW.specimen_id ORDER BY sequence DESC LIMIT 1;
  IF NOT FOUND THEN
    IF NEW.sequence <> 1 OR NEW.from_party IS NOT NULL THEN
      RAISE EXCEPTION 'anatheca:custody.broken-chain';
    END IF;
  ELSIF NEW.sequence <> last.sequence + 1 OR NEW.from_party IS DISTINCT FROM last.to_party
     OR NEW.handed_over_at < last.handed_over_at THEN
    RAISE EXCEPTION 'anatheca:custody.broken-chain';
  END IF;
  RETURN NEW;
END $$;

CREATE TRIGGER chain_holds BEFORE INSERT ON custody_event FOR EACH ROW EXECUTE FUNCTION check_custody_chain();

-- 6. Signatures --------------------------------------------------------------

CREATE FUNCTION check_signature() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  signed record;
BEGIN
  SELECT a.sha256, a.version, (SELECT max(version) FROM agreement WHERE loan_id = a.loan_id) AS newest
    INTO signed FROM agreement a WHERE a.id = NEW.agreement_id;
  IF signed.sha256 <> NEW.sha256 THEN
    RAISE EXCEPTION 'anatheca:agreement.other-terms';
  END IF;
  IF signed.version <> signed.newest THEN
    RAISE EXCEPTION 'anatheca:agreement.superseded';
  END IF;
  RETURN NEW;
END $$;

CREATE TRIGGER signs_the_newest BEFORE INSERT ON signature FOR EACH ROW EXECUTE FUNCTION check_signature();

ALTER TABLE agreement
  ADD CONSTRAINT agreement_hash CHECK (sha256 = encode(sha256(convert_to(terms, 'UTF8')), 'hex'));

-- 7. Sealed records ----------------------------------------------------------

CREATE FUNCTION sealed.open_record(wanted text, why text)
RETURNS SETOF sealed.donor_identity
LANGUAGE plpgsql SECURITY DEFINER SET search_path = sealed, public, pg_temp AS $$
BEGIN
  IF length(trim(coalesce(why, ''))) < 10 THEN
    RAISE EXCEPTION 'anatheca:donor.reason-missing';
  END IF;
  INSERT INTO donor_look (donor_code, account_id, reason)
    VALUES (wanted, current_setting('anatheca.actor'), trim(why));
  RETURN QUERY SELECT * FROM donor_identity WHERE donor_code = wanted;
END $$;

CREATE FUNCTION sealed.keep_record(of_donor text, named text, born date, died date, relatives text, evidence text)
RETURNS void
LANGUAGE sql SECURITY DEFINER SET search_path = sealed, public, pg_temp AS $$
  INSERT INTO donor_identity (donor_code, full_name, born_on, died_on, kin, document_place)
    VALUES (of_donor, named, born, died, relatives, evidence)
  ON CONFLICT (donor_code) DO UPDATE SET full_name = named, born_on = born, died_on = died,
    kin = relatives, document_place = evidence;
$$;

REVOKE ALL ON FUNCTION sealed.open_record(text, text) FROM PUBLIC;
REVOKE ALL ON FUNCTION sealed.keep_record(text, text, date, date, text, text) FROM PUBLIC;

-- Closed sets and ranges that no code may get round ---------------------------

ALTER TABLE consent_answer ADD CONSTRAINT consent_answer_set CHECK (answer IN ('granted', 'refused', 'not asked', 'unknown'));
ALTER TABLE title ADD CONSTRAINT title_status_set CHECK (status IN ('owned', 'deposit', 'loan-in', 'disputed', 'unknown'));
ALTER TABLE finding
  ADD CONSTRAINT finding_severity_set CHECK (severity IN ('none', 'trace', 'minor', 'moderate', 'severe')),
  ADD CONSTRAINT finding_place_on_picture CHECK ((x IS NULL) = (y IS NULL) AND (x IS NULL OR (x BETWEEN 0 AND 1 AND y BETWEEN 0 AND 1))),
  ADD CONSTRAINT finding_extent_not_negative CHECK (coalesce(extent_mm, 0) >= 0 AND coalesce(extent_percent, 0) BETWEEN 0 AND 100);
ALTER TABLE decision ADD CONSTRAINT decision_outcome_set CHECK (outcome IN ('accept', 'decline'));
ALTER TABLE cover
  ADD CONSTRAINT cover_has_time CHECK (starts_at < ends_at),
  ADD CONSTRAINT cover_amount_positive CHECK (amount_minor > 0);
ALTER TABLE loan
  ADD CONSTRAINT loan_has_days CHECK (starts_on < ends_on),
  ADD CONSTRAINT loan_buffers_not_negative CHECK (days_before >= 0 AND days_after >= 0);
ALTER TABLE signature ADD CONSTRAINT signature_party_set CHECK (party IN ('lender', 'borrower'));
ALTER TABLE stage
  ADD CONSTRAINT stage_direction_set CHECK (direction IN ('out', 'home')),
  ADD CONSTRAINT stage_has_days CHECK (departs_on <= arrives_on);
ALTER TABLE crate_event ADD CONSTRAINT crate_event_kind_set
  CHECK (kind IN ('packed', 'sealed', 'handed over', 'arrived', 'opened', 'emptied'));
ALTER TABLE specimen
  ADD CONSTRAINT specimen_sheet_has_series CHECK ((series_id IS NULL) = (number_in_series IS NULL)),
  ADD CONSTRAINT specimen_not_its_own_whole CHECK (whole_id IS DISTINCT FROM id),
  ADD CONSTRAINT specimen_cost_has_currency CHECK ((replacement_cost_minor IS NULL) = (replacement_cost_currency IS NULL)),
  ADD CONSTRAINT specimen_sizes_positive CHECK (least(length_mm, width_mm, height_mm, mounted_length_mm, mounted_width_mm, mounted_height_mm) > 0
    AND coalesce(least(mass_kg, mounted_mass_kg), 1) > 0);
ALTER TABLE structure_link ADD CONSTRAINT structure_link_not_itself CHECK (child_id <> parent_id);

-- What the application may do --------------------------------------------------

GRANT USAGE ON SCHEMA public, sealed TO anatheca_app;
GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA public TO anatheca_app;
GRANT USAGE ON ALL SEQUENCES IN SCHEMA public TO anatheca_app;
REVOKE UPDATE, DELETE ON move, custody_event, condition_check, finding, crate_event, crate_count,
  suitability_run, decision, agreement, signature FROM anatheca_app;
REVOKE INSERT, UPDATE, DELETE ON audit_entry, loan_line_move, structure, structure_name, structure_link,
  structure_ancestor FROM anatheca_app;
GRANT SELECT ON sealed.donor_look TO anatheca_app;
GRANT EXECUTE ON FUNCTION sealed.open_record(text, text) TO anatheca_app;
GRANT EXECUTE ON FUNCTION sealed.keep_record(text, text, date, date, text, text) TO anatheca_app;
