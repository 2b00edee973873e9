-- AlterTable
ALTER TABLE "decision" ADD COLUMN     "specimen_ids" UUID[];

-- AlterTable
ALTER TABLE "loan" ADD COLUMN     "facts_confirmed_at" TIMESTAMPTZ(6),
ADD COLUMN     "opens_on" DATE;

-- AlterTable
ALTER TABLE "loan_line" ADD COLUMN     "substitute_for_id" UUID;

-- AlterTable
ALTER TABLE "signature" ADD COLUMN     "electronic" BOOLEAN NOT NULL DEFAULT true,
ADD COLUMN     "file_id" UUID,
ADD COLUMN     "language" CHAR(2) NOT NULL DEFAULT 'en',
ADD COLUMN     "mandate_id" UUID,
ADD COLUMN     "method" TEXT NOT NULL DEFAULT 'typed',
ADD COLUMN     "strokes" TEXT NOT NULL DEFAULT '';

-- AlterTable
ALTER TABLE "suitability_run" ADD COLUMN     "inputs" JSONB,
ADD COLUMN     "rulebook" TEXT NOT NULL DEFAULT '';

-- CreateTable
CREATE TABLE "climate_record" (
    "id" UUID NOT NULL,
    "venue_id" UUID NOT NULL,
    "file_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "starts_at" TIMESTAMPTZ(6) NOT NULL,
    "ends_at" TIMESTAMPTZ(6) NOT NULL,
    "reading_count" INTEGER NOT NULL,
    "judged" JSONB NOT NULL,
    "account_id" TEXT NOT NULL,
    "filed_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "climate_record_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "message" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "account_id" TEXT NOT NULL,
    "side" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "written_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "message_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "message_seen" (
    "loan_id" UUID NOT NULL,
    "account_id" TEXT NOT NULL,
    "seen_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "message_seen_pkey" PRIMARY KEY ("loan_id","account_id")
);

-- CreateTable
CREATE TABLE "extension" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "ends_on" DATE NOT NULL,
    "grounds" TEXT NOT NULL,
    "asked_by" TEXT NOT NULL,
    "asked_at" TIMESTAMPTZ(6) NOT NULL,
    "outcome" TEXT,
    "answer" TEXT NOT NULL DEFAULT '',
    "answered_by" TEXT,
    "answered_at" TIMESTAMPTZ(6),

    CONSTRAINT "extension_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "recall" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "specimen_ids" UUID[],
    "ground" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "stop_use" BOOLEAN NOT NULL,
    "return_by" DATE NOT NULL,
    "account_id" TEXT NOT NULL,
    "recalled_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "recall_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "fee_scale" (
    "id" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "currency" CHAR(3) NOT NULL,
    "content" JSONB NOT NULL,
    "valid_from" DATE NOT NULL,
    "account_id" TEXT NOT NULL,
    "set_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "fee_scale_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "costing" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "content" TEXT NOT NULL,
    "sha256" CHAR(64) NOT NULL,
    "currency" CHAR(3) NOT NULL,
    "total_minor" BIGINT NOT NULL,
    "valid_until" DATE,
    "drawn_up_by" TEXT NOT NULL,
    "drawn_up_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "costing_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "costing_answer" (
    "costing_id" UUID NOT NULL,
    "outcome" TEXT NOT NULL,
    "remark" TEXT NOT NULL DEFAULT '',
    "account_id" TEXT NOT NULL,
    "answered_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "costing_answer_pkey" PRIMARY KEY ("costing_id")
);

-- CreateTable
CREATE TABLE "claim" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "specimen_id" UUID NOT NULL,
    "number" TEXT NOT NULL,

    CONSTRAINT "claim_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "claim_event" (
    "id" UUID NOT NULL,
    "claim_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "amount_minor" BIGINT,
    "currency" CHAR(3),
    "note" TEXT NOT NULL DEFAULT '',
    "account_id" TEXT NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "sequence" BIGSERIAL NOT NULL,

    CONSTRAINT "claim_event_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "reminder" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "ends_on" DATE NOT NULL,
    "day_shift" INTEGER NOT NULL,
    "taken_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "reminder_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "plan_step" (
    "loan_id" UUID NOT NULL,
    "step" TEXT NOT NULL,
    "planned_on" DATE,
    "done_on" DATE,

    CONSTRAINT "plan_step_pkey" PRIMARY KEY ("loan_id","step")
);

-- CreateTable
CREATE TABLE "issued_paper" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "subject" TEXT NOT NULL DEFAULT '',
    "version" INTEGER NOT NULL,
    "content" TEXT NOT NULL,
    "sha256" CHAR(64) NOT NULL,
    "code" TEXT NOT NULL,
    "issued_by" TEXT NOT NULL,
    "issued_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "issued_paper_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "rule_override" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "specimen_id" UUID NOT NULL,
    "rule" TEXT NOT NULL,
    "fact" TEXT NOT NULL,
    "grounds" TEXT NOT NULL,
    "evidence" TEXT NOT NULL,
    "account_id" TEXT NOT NULL,
    "office" TEXT NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "rule_override_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "facility_report" (
    "id" UUID NOT NULL,
    "venue_id" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "answers" JSONB NOT NULL,
    "reported_on" DATE NOT NULL,
    "valid_until" DATE NOT NULL,
    "reported_by" TEXT NOT NULL,
    "account_id" TEXT NOT NULL,
    "filed_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "facility_report_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "insurance" (
    "id" UUID NOT NULL,
    "institution_id" UUID NOT NULL,
    "insurer" TEXT NOT NULL,
    "policy_number" TEXT NOT NULL,
    "amount_minor" BIGINT NOT NULL,
    "currency" CHAR(3) NOT NULL,
    "valid_from" DATE NOT NULL,
    "valid_until" DATE NOT NULL,
    "covers_transit" BOOLEAN NOT NULL,
    "territories" TEXT[],

    CONSTRAINT "insurance_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "mandate" (
    "id" UUID NOT NULL,
    "account_id" TEXT NOT NULL,
    "acts" TEXT[],
    "limit_minor" BIGINT,
    "limit_currency" CHAR(3),
    "valid_from" DATE NOT NULL,
    "valid_until" DATE,
    "given_by" TEXT NOT NULL,
    "reference" TEXT NOT NULL DEFAULT '',
    "revoked_on" DATE,

    CONSTRAINT "mandate_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "calendar_feed" (
    "account_id" TEXT NOT NULL,
    "link_hash" TEXT NOT NULL,
    "made_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "calendar_feed_pkey" PRIMARY KEY ("account_id")
);

-- CreateTable
CREATE TABLE "mail" (
    "id" UUID NOT NULL,
    "account_id" TEXT,
    "address" TEXT NOT NULL,
    "language" CHAR(2) NOT NULL,
    "code" TEXT NOT NULL,
    "parameters" JSONB NOT NULL,
    "about" TEXT NOT NULL,
    "queued_at" TIMESTAMPTZ(6) NOT NULL,
    "sent_at" TIMESTAMPTZ(6),
    "attempts" INTEGER NOT NULL DEFAULT 0,
    "fault" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "mail_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "tariff_code" (
    "id" UUID NOT NULL,
    "stage_id" UUID NOT NULL,
    "country_code" CHAR(2) NOT NULL,
    "specimen_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "decided_by" TEXT NOT NULL,
    "decided_on" DATE NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "tariff_code_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "climate_record_venue_id_starts_at_idx" ON "climate_record"("venue_id", "starts_at");

-- CreateIndex
CREATE INDEX "message_loan_id_written_at_idx" ON "message"("loan_id", "written_at");

-- CreateIndex
CREATE INDEX "extension_loan_id_asked_at_idx" ON "extension"("loan_id", "asked_at");

-- CreateIndex
CREATE UNIQUE INDEX "extension_one_open" ON "extension"("loan_id") WHERE (outcome IS NULL);

-- CreateIndex
CREATE INDEX "recall_loan_id_recalled_at_idx" ON "recall"("loan_id", "recalled_at");

-- CreateIndex
CREATE UNIQUE INDEX "fee_scale_version_key" ON "fee_scale"("version");

-- CreateIndex
CREATE UNIQUE INDEX "costing_loan_id_kind_version_key" ON "costing"("loan_id", "kind", "version");

-- CreateIndex
CREATE UNIQUE INDEX "claim_number_key" ON "claim"("number");

-- CreateIndex
CREATE INDEX "claim_loan_id_idx" ON "claim"("loan_id");

-- CreateIndex
CREATE INDEX "claim_event_claim_id_sequence_idx" ON "claim_event"("claim_id", "sequence");

-- CreateIndex
CREATE UNIQUE INDEX "reminder_loan_id_ends_on_day_shift_key" ON "reminder"("loan_id", "ends_on", "day_shift");

-- CreateIndex
CREATE UNIQUE INDEX "issued_paper_code_key" ON "issued_paper"("code");

-- CreateIndex
CREATE UNIQUE INDEX "issued_paper_loan_id_kind_subject_version_key" ON "issued_paper"("loan_id", "kind", "subject", "version");

-- CreateIndex
CREATE INDEX "rule_override_loan_id_specimen_id_rule_idx" ON "rule_override"("loan_id", "specimen_id", "rule");

-- CreateIndex
CREATE UNIQUE INDEX "facility_report_venue_id_version_key" ON "facility_report"("venue_id", "version");

-- CreateIndex
CREATE UNIQUE INDEX "insurance_institution_id_policy_number_valid_from_key" ON "insurance"("institution_id", "policy_number", "valid_from");

-- CreateIndex
CREATE INDEX "mandate_account_id_idx" ON "mandate"("account_id");

-- CreateIndex
CREATE UNIQUE INDEX "calendar_feed_link_hash_key" ON "calendar_feed"("link_hash");

-- CreateIndex
CREATE INDEX "mail_about_queued_at_idx" ON "mail"("about", "queued_at");

-- CreateIndex
CREATE INDEX "mail_account_id_queued_at_idx" ON "mail"("account_id", "queued_at");

-- CreateIndex
CREATE INDEX "mail_unsent" ON "mail"("queued_at") WHERE (sent_at IS NULL);

-- CreateIndex
CREATE UNIQUE INDEX "tariff_code_stage_id_country_code_specimen_id_key" ON "tariff_code"("stage_id", "country_code", "specimen_id");

-- AddForeignKey
ALTER TABLE "climate_record" ADD CONSTRAINT "climate_record_venue_id_fkey" FOREIGN KEY ("venue_id") REFERENCES "venue"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "climate_record" ADD CONSTRAINT "climate_record_file_id_fkey" FOREIGN KEY ("file_id") REFERENCES "stored_file"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "loan_line" ADD CONSTRAINT "loan_line_substitute_for_id_fkey" FOREIGN KEY ("substitute_for_id") REFERENCES "loan_line"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "signature" ADD CONSTRAINT "signature_file_id_fkey" FOREIGN KEY ("file_id") REFERENCES "stored_file"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "message" ADD CONSTRAINT "message_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "extension" ADD CONSTRAINT "extension_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "recall" ADD CONSTRAINT "recall_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "costing" ADD CONSTRAINT "costing_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "costing_answer" ADD CONSTRAINT "costing_answer_costing_id_fkey" FOREIGN KEY ("costing_id") REFERENCES "costing"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "claim" ADD CONSTRAINT "claim_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "claim_event" ADD CONSTRAINT "claim_event_claim_id_fkey" FOREIGN KEY ("claim_id") REFERENCES "claim"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "reminder" ADD CONSTRAINT "reminder_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_step" ADD CONSTRAINT "plan_step_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "issued_paper" ADD CONSTRAINT "issued_paper_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "rule_override" ADD CONSTRAINT "rule_override_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "facility_report" ADD CONSTRAINT "facility_report_venue_id_fkey" FOREIGN KEY ("venue_id") REFERENCES "venue"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "insurance" ADD CONSTRAINT "insurance_institution_id_fkey" FOREIGN KEY ("institution_id") REFERENCES "institution"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "mandate" ADD CONSTRAINT "mandate_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "calendar_feed" ADD CONSTRAINT "calendar_feed_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tariff_code" ADD CONSTRAINT "tariff_code_stage_id_fkey" FOREIGN KEY ("stage_id") REFERENCES "stage"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tariff_code" ADD CONSTRAINT "tariff_code_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What must never be -----------------------------------------------------------

DO $$
DECLARE
  audited text[][] := ARRAY[
    ['public.facility_report', 'id'], ['public.insurance', 'id'], ['public.mandate', 'id'],
    ['public.calendar_feed', 'account_id'], ['public.climate_record', 'id'],
    ['public.tariff_code', 'id'], ['public.message', 'id'], ['public.extension', 'id'], ['public.recall', 'id'],
    ['public.fee_scale', 'id'], ['public.costing', 'id'],
    ['public.costing_answer', 'costing_id'], ['public.claim', 'id'], ['public.claim_event', 'id'],
    ['public.reminder', 'id'], ['public.plan_step', 'loan_id,step'], ['public.issued_paper', 'id'],
    ['public.rule_override', 'id']
  ];
  entry text[];
  arguments text;
  chain text;
BEGIN
  FOREACH entry SLICE 1 IN ARRAY audited LOOP
    SELECT string_agg(quote_literal(part), ', ') INTO arguments FROM unnest(string_to_array(entry[2], ',')) AS part;
    EXECUTE format('CREATE TRIGGER audited AFTER INSERT OR UPDATE OR DELETE ON %s FOR EACH ROW EXECUTE FUNCTION audit_change(%s)',
                   entry[1], arguments);
  END LOOP;
  FOREACH chain IN ARRAY ARRAY['public.facility_report', 'public.climate_record', 'public.message', 'public.recall',
    'public.fee_scale', 'public.costing', 'public.costing_answer', 'public.claim', 'public.claim_event',
    'public.reminder', 'public.issued_paper', 'public.rule_override']
  LOOP
    EXECUTE format('CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON %s FOR EACH ROW EXECUTE FUNCTION refuse_change()', chain);
    EXECUTE format('CREATE TRIGGER never_emptied BEFORE TRUNCATE ON %s FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()', chain);
  END LOOP;
END $$;

-- What is asked is answered once, and an answer is not changed.
CREATE FUNCTION check_answered_once() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD.answered_at IS NOT NULL AND NEW IS DISTINCT FROM OLD THEN
    RAISE EXCEPTION 'anatheca:answer.fixed';
  END IF;
  RETURN NEW;
END $$;

CREATE TRIGGER answered_once BEFORE UPDATE ON extension FOR EACH ROW EXECUTE FUNCTION check_answered_once();

ALTER TABLE decision
  DROP CONSTRAINT decision_outcome_set,
  ADD CONSTRAINT decision_outcome_set CHECK (outcome IN ('accept', 'decline', 'recuse'));
ALTER TABLE signature
  ADD CONSTRAINT signature_method_set CHECK (method IN ('typed', 'drawn', 'countersigned')),
  ADD CONSTRAINT signature_drawn_has_strokes CHECK ((method = 'drawn') = (strokes <> '')),
  ADD CONSTRAINT signature_countersigned_has_file CHECK ((method = 'countersigned') = (file_id IS NOT NULL)),
  ADD CONSTRAINT signature_on_screen_agreed_to CHECK (method = 'countersigned' OR electronic);
ALTER TABLE extension
  ADD CONSTRAINT extension_outcome_set CHECK (outcome IN ('granted', 'refused')),
  ADD CONSTRAINT extension_answered_whole CHECK ((outcome IS NULL) = (answered_at IS NULL) AND (outcome IS NULL) = (answered_by IS NULL));
ALTER TABLE costing
  ADD CONSTRAINT costing_kind_set CHECK (kind IN ('quotation', 'cost statement')),
  ADD CONSTRAINT costing_total_not_negative CHECK (total_minor >= 0),
  ADD CONSTRAINT costing_hash CHECK (sha256 = encode(sha256(convert_to(content, 'UTF8')), 'hex'));
ALTER TABLE costing_answer ADD CONSTRAINT costing_answer_outcome_set CHECK (outcome IN ('accepted', 'refused'));
ALTER TABLE claim_event
  ADD CONSTRAINT claim_event_kind_set CHECK (kind IN ('opened', 'notified', 'surveyed', 'estimated', 'settled', 'dropped')),
  ADD CONSTRAINT claim_event_amount_has_currency CHECK ((amount_minor IS NULL) = (currency IS NULL) AND coalesce(amount_minor, 0) >= 0);
ALTER TABLE issued_paper
  ADD CONSTRAINT issued_paper_hash CHECK (sha256 = encode(sha256(convert_to(content, 'UTF8')), 'hex')),
  ADD CONSTRAINT issued_paper_version_positive CHECK (version >= 1);
ALTER TABLE facility_report ADD CONSTRAINT facility_report_has_time CHECK (reported_on < valid_until);
ALTER TABLE insurance
  ADD CONSTRAINT insurance_has_time CHECK (valid_from < valid_until),
  ADD CONSTRAINT insurance_amount_positive CHECK (amount_minor > 0);
ALTER TABLE mandate
  ADD CONSTRAINT mandate_has_time CHECK (valid_until IS NULL OR valid_from < valid_until),
  ADD CONSTRAINT mandate_limit_has_currency CHECK ((limit_minor IS NULL) = (limit_currency IS NULL) AND coalesce(limit_minor, 1) > 0);
ALTER TABLE message ADD CONSTRAINT message_side_set CHECK (side IN ('centre', 'borrower'));
ALTER TABLE climate_record ADD CONSTRAINT climate_record_has_time CHECK (starts_at <= ends_at AND reading_count > 0);
ALTER TABLE loan ADD CONSTRAINT loan_opens_within CHECK (opens_on IS NULL OR (opens_on >= starts_on AND opens_on < ends_on));
ALTER TABLE loan_line ADD CONSTRAINT loan_line_not_its_own_substitute CHECK (substitute_for_id IS DISTINCT FROM id);

GRANT SELECT, INSERT, UPDATE, DELETE ON insurance, mandate, calendar_feed, tariff_code, message_seen, extension,
  plan_step, mail TO anatheca_app;
GRANT SELECT, INSERT ON facility_report, climate_record, message, recall, fee_scale, costing, costing_answer, claim,
  claim_event, reminder, issued_paper, rule_override TO anatheca_app;
GRANT USAGE ON ALL SEQUENCES IN SCHEMA public TO anatheca_app;
