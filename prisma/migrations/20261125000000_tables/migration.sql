-- Extensions the tables lean on: trigram search, and equality inside exclusion constraints.
CREATE EXTENSION IF NOT EXISTS pg_trgm;
CREATE EXTENSION IF NOT EXISTS btree_gist;

-- CreateSchema


-- CreateSchema
CREATE SCHEMA IF NOT EXISTS "sealed";

-- CreateTable
CREATE TABLE "structure" (
    "id" TEXT NOT NULL,
    "english" TEXT NOT NULL,
    "latin" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "paired" BOOLEAN NOT NULL,
    "animal" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "structure_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "structure_name" (
    "id" SERIAL NOT NULL,
    "structure_id" TEXT NOT NULL,
    "language" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "search_key" TEXT NOT NULL,

    CONSTRAINT "structure_name_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "structure_link" (
    "child_id" TEXT NOT NULL,
    "relation" TEXT NOT NULL,
    "parent_id" TEXT NOT NULL,

    CONSTRAINT "structure_link_pkey" PRIMARY KEY ("child_id","relation","parent_id")
);

-- CreateTable
CREATE TABLE "structure_ancestor" (
    "ancestor_id" TEXT NOT NULL,
    "descendant_id" TEXT NOT NULL,
    "via" TEXT NOT NULL,

    CONSTRAINT "structure_ancestor_pkey" PRIMARY KEY ("ancestor_id","descendant_id","via")
);

-- CreateTable
CREATE TABLE "condition_check" (
    "id" UUID NOT NULL,
    "specimen_id" UUID NOT NULL,
    "loan_id" UUID,
    "occasion" TEXT NOT NULL,
    "checked_on" DATE NOT NULL,
    "recorded_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "checked_by" TEXT NOT NULL,
    "account_id" TEXT NOT NULL,
    "witness" TEXT,
    "fit_to_show" BOOLEAN NOT NULL,
    "fit_to_handle" BOOLEAN NOT NULL,
    "fit_to_travel" BOOLEAN NOT NULL,
    "grounds" TEXT NOT NULL,
    "grade" TEXT NOT NULL,
    "sequence" BIGSERIAL NOT NULL,

    CONSTRAINT "condition_check_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "finding" (
    "id" UUID NOT NULL,
    "check_id" UUID NOT NULL,
    "mark_id" UUID NOT NULL,
    "term" TEXT NOT NULL,
    "place" TEXT NOT NULL,
    "x" DOUBLE PRECISION,
    "y" DOUBLE PRECISION,
    "extent_mm" DOUBLE PRECISION,
    "extent_percent" DOUBLE PRECISION,
    "severity" TEXT NOT NULL,
    "activity" TEXT NOT NULL,
    "answer" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "finding_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "loan" (
    "id" UUID NOT NULL,
    "number" TEXT NOT NULL,
    "borrower_id" UUID NOT NULL,
    "venue_id" UUID NOT NULL,
    "title" TEXT NOT NULL,
    "purpose" TEXT NOT NULL,
    "teaching_use" TEXT NOT NULL,
    "audience" TEXT NOT NULL,
    "paid_admission" BOOLEAN NOT NULL,
    "display_style" TEXT NOT NULL,
    "pictures" TEXT[],
    "starts_on" DATE NOT NULL,
    "ends_on" DATE NOT NULL,
    "days_before" INTEGER NOT NULL,
    "days_after" INTEGER NOT NULL,
    "contact_name" TEXT NOT NULL,
    "contact_email" TEXT NOT NULL,
    "contact_phone" TEXT NOT NULL,
    "cover_minor" BIGINT,
    "cover_currency" CHAR(3),
    "note" TEXT NOT NULL DEFAULT '',
    "created_by_id" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "submitted_at" TIMESTAMPTZ(6),
    "closed_at" TIMESTAMPTZ(6),

    CONSTRAINT "loan_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "loan_line" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "specimen_id" UUID NOT NULL,
    "state" TEXT NOT NULL,
    "state_since" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "loan_line_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "loan_line_move" (
    "from_state" TEXT NOT NULL,
    "to_state" TEXT NOT NULL,

    CONSTRAINT "loan_line_move_pkey" PRIMARY KEY ("from_state","to_state")
);

-- CreateTable
CREATE TABLE "suitability_run" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "occasion" TEXT NOT NULL,
    "run_at" TIMESTAMPTZ(6) NOT NULL,
    "account_id" TEXT NOT NULL,
    "findings" JSONB NOT NULL,

    CONSTRAINT "suitability_run_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "decision" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "account_id" TEXT NOT NULL,
    "decided_by" TEXT NOT NULL,
    "office" TEXT NOT NULL,
    "outcome" TEXT NOT NULL,
    "conditions" TEXT NOT NULL DEFAULT '',
    "grounds" TEXT NOT NULL,
    "reference" TEXT NOT NULL DEFAULT '',
    "decided_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "decision_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "cover" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "insurer" TEXT NOT NULL,
    "policy_number" TEXT NOT NULL,
    "amount_minor" BIGINT NOT NULL,
    "currency" CHAR(3) NOT NULL,
    "starts_at" TIMESTAMPTZ(6) NOT NULL,
    "ends_at" TIMESTAMPTZ(6) NOT NULL,
    "covers_transit" BOOLEAN NOT NULL,
    "territories" TEXT[],

    CONSTRAINT "cover_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "agreement" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "terms" TEXT NOT NULL,
    "sha256" CHAR(64) NOT NULL,
    "drawn_up_by" TEXT NOT NULL,
    "drawn_up_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "agreement_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "signature" (
    "id" UUID NOT NULL,
    "agreement_id" UUID NOT NULL,
    "party" TEXT NOT NULL,
    "signer_name" TEXT NOT NULL,
    "signer_role" TEXT NOT NULL,
    "account_id" TEXT NOT NULL,
    "signed_at" TIMESTAMPTZ(6) NOT NULL,
    "sha256" CHAR(64) NOT NULL,

    CONSTRAINT "signature_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "institution" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "country_code" CHAR(2) NOT NULL,
    "city" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "languages" TEXT[],
    "email" TEXT NOT NULL,
    "phone" TEXT NOT NULL,
    "standing" TEXT NOT NULL DEFAULT 'good',
    "verified_on" DATE,
    "note" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "institution_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "venue" (
    "id" UUID NOT NULL,
    "institution_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "country_code" CHAR(2) NOT NULL,
    "temperature_low_c" DOUBLE PRECISION,
    "temperature_high_c" DOUBLE PRECISION,
    "temperature_swing24h_k" DOUBLE PRECISION,
    "humidity_low" DOUBLE PRECISION,
    "humidity_high" DOUBLE PRECISION,
    "humidity_swing24h" DOUBLE PRECISION,
    "illuminance_lx" DOUBLE PRECISION,
    "uv_microwatt_per_lumen" DOUBLE PRECISION,
    "hours_open_per_day" DOUBLE PRECISION,
    "days_open_per_week" DOUBLE PRECISION,
    "supervised_room" BOOLEAN,
    "restricted_view" BOOLEAN,
    "spill_provision" BOOLEAN,
    "fire_detection" BOOLEAN,
    "night_guard" BOOLEAN,
    "reported_on" DATE,

    CONSTRAINT "venue_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "passage" (
    "id" UUID NOT NULL,
    "venue_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "width_mm" INTEGER NOT NULL,
    "height_mm" INTEGER NOT NULL,
    "depth_mm" INTEGER,
    "second_width_mm" INTEGER,
    "load_kg" DOUBLE PRECISION,

    CONSTRAINT "passage_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "licence" (
    "id" UUID NOT NULL,
    "venue_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "authority" TEXT NOT NULL,
    "number" TEXT NOT NULL,
    "valid_from" DATE,
    "valid_until" DATE,

    CONSTRAINT "licence_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "account" (
    "id" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "roles" TEXT[],
    "institution_id" UUID,
    "active" BOOLEAN NOT NULL DEFAULT true,

    CONSTRAINT "account_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "setting" (
    "key" TEXT NOT NULL,
    "value" JSONB NOT NULL,

    CONSTRAINT "setting_pkey" PRIMARY KEY ("key")
);

-- CreateTable
CREATE TABLE "counter" (
    "key" TEXT NOT NULL,
    "value" INTEGER NOT NULL,

    CONSTRAINT "counter_pkey" PRIMARY KEY ("key")
);

-- CreateTable
CREATE TABLE "audit_entry" (
    "id" BIGSERIAL NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT clock_timestamp(),
    "actor" TEXT NOT NULL,
    "act" TEXT NOT NULL,
    "table_name" TEXT NOT NULL,
    "row_key" TEXT NOT NULL,
    "operation" TEXT NOT NULL,
    "before" JSONB,
    "after" JSONB,

    CONSTRAINT "audit_entry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "command_receipt" (
    "key" TEXT NOT NULL,
    "account_id" TEXT NOT NULL,
    "act" TEXT NOT NULL,
    "answer" JSONB NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "command_receipt_pkey" PRIMARY KEY ("account_id","act","key")
);

-- CreateTable
CREATE TABLE "stored_file" (
    "id" UUID NOT NULL,
    "sha256" TEXT NOT NULL,
    "media_type" TEXT NOT NULL,
    "byte_count" INTEGER NOT NULL,
    "width_px" INTEGER,
    "height_px" INTEGER,
    "content" BYTEA NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "stored_file_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "donor" (
    "code" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "donor_pkey" PRIMARY KEY ("code")
);

-- CreateTable
CREATE TABLE "sealed"."donor_identity" (
    "donor_code" TEXT NOT NULL,
    "full_name" TEXT NOT NULL,
    "born_on" DATE,
    "died_on" DATE,
    "kin" TEXT NOT NULL DEFAULT '',
    "document_place" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "donor_identity_pkey" PRIMARY KEY ("donor_code")
);

-- CreateTable
CREATE TABLE "sealed"."donor_look" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "donor_code" TEXT NOT NULL,
    "account_id" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "looked_at" TIMESTAMPTZ(6) NOT NULL DEFAULT clock_timestamp(),

    CONSTRAINT "donor_look_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "consent" (
    "id" UUID NOT NULL,
    "donor_code" TEXT NOT NULL,
    "basis" TEXT NOT NULL,
    "form_version" TEXT NOT NULL,
    "signed_on" DATE,
    "witness_count" INTEGER,
    "evidence_place" TEXT NOT NULL,
    "audience" TEXT NOT NULL,
    "territories_allowed" TEXT[],
    "territories_refused" TEXT[],
    "valid_until" DATE,
    "review_due_on" DATE,
    "non_commercial_only" BOOLEAN NOT NULL,
    "identifiable" BOOLEAN NOT NULL DEFAULT false,
    "withdrawal_received_on" DATE,
    "withdrawal_effective_on" DATE,
    "disposition" TEXT NOT NULL,
    "disposition_due_on" DATE,
    "verified_by" TEXT,
    "verified_on" DATE,
    "superseded_by_id" UUID,
    "recorded_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "consent_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "consent_answer" (
    "consent_id" UUID NOT NULL,
    "scope" TEXT NOT NULL,
    "answer" TEXT NOT NULL,

    CONSTRAINT "consent_answer_pkey" PRIMARY KEY ("consent_id","scope")
);

-- CreateTable
CREATE TABLE "specimen_donor" (
    "specimen_id" UUID NOT NULL,
    "donor_code" TEXT NOT NULL,

    CONSTRAINT "specimen_donor_pkey" PRIMARY KEY ("specimen_id","donor_code")
);

-- CreateTable
CREATE TABLE "permit" (
    "id" UUID NOT NULL,
    "specimen_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "number" TEXT NOT NULL,
    "authority" TEXT NOT NULL,
    "territories" TEXT[],
    "valid_from" DATE,
    "valid_until" DATE,

    CONSTRAINT "permit_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "title" (
    "specimen_id" UUID NOT NULL,
    "status" TEXT NOT NULL,
    "owner_name" TEXT NOT NULL DEFAULT '',
    "leave_to_lend" BOOLEAN NOT NULL DEFAULT false,
    "leave_reference" TEXT NOT NULL DEFAULT '',
    "recorded_on" DATE NOT NULL,

    CONSTRAINT "title_pkey" PRIMARY KEY ("specimen_id")
);

-- CreateTable
CREATE TABLE "crate" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "outer_length_mm" INTEGER NOT NULL,
    "outer_width_mm" INTEGER NOT NULL,
    "outer_height_mm" INTEGER NOT NULL,
    "gross_mass_kg" DOUBLE PRECISION NOT NULL,
    "plan" JSONB NOT NULL,

    CONSTRAINT "crate_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "crate_content" (
    "crate_id" UUID NOT NULL,
    "specimen_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,

    CONSTRAINT "crate_content_pkey" PRIMARY KEY ("crate_id","specimen_id")
);

-- CreateTable
CREATE TABLE "stage" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "direction" TEXT NOT NULL,
    "carrier" TEXT NOT NULL,
    "carrier_email" TEXT NOT NULL DEFAULT '',
    "vehicle" TEXT NOT NULL DEFAULT '',
    "departs_on" DATE NOT NULL,
    "arrives_on" DATE NOT NULL,
    "link_hash" TEXT,
    "link_expires_at" TIMESTAMPTZ(6),

    CONSTRAINT "stage_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "crate_event" (
    "id" UUID NOT NULL,
    "crate_id" UUID NOT NULL,
    "stage_id" UUID,
    "kind" TEXT NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "by" TEXT NOT NULL,
    "seal_number" TEXT,
    "seal_intact" BOOLEAN,
    "outside_damage" TEXT NOT NULL DEFAULT '',
    "not_before" TIMESTAMPTZ(6),
    "sequence" BIGSERIAL NOT NULL,

    CONSTRAINT "crate_event_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "crate_count" (
    "event_id" UUID NOT NULL,
    "specimen_id" UUID NOT NULL,
    "present" BOOLEAN NOT NULL,
    "remark" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "crate_count_pkey" PRIMARY KEY ("event_id","specimen_id")
);

-- CreateTable
CREATE TABLE "auth_user" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "emailVerified" BOOLEAN NOT NULL,
    "image" TEXT,
    "createdAt" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "auth_user_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "auth_session" (
    "id" TEXT NOT NULL,
    "expiresAt" TIMESTAMPTZ(6) NOT NULL,
    "token" TEXT NOT NULL,
    "createdAt" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "ipAddress" TEXT,
    "userAgent" TEXT,
    "userId" TEXT NOT NULL,

    CONSTRAINT "auth_session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "auth_secret" (
    "id" TEXT NOT NULL,
    "accountId" TEXT NOT NULL,
    "providerId" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "accessToken" TEXT,
    "refreshToken" TEXT,
    "idToken" TEXT,
    "accessTokenExpiresAt" TIMESTAMPTZ(6),
    "refreshTokenExpiresAt" TIMESTAMPTZ(6),
    "scope" TEXT,
    "password" TEXT,
    "createdAt" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "auth_secret_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "auth_verification" (
    "id" TEXT NOT NULL,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expiresAt" TIMESTAMPTZ(6) NOT NULL,
    "createdAt" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "auth_verification_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "auth_rate_limit" (
    "id" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "lastRequest" BIGINT NOT NULL,

    CONSTRAINT "auth_rate_limit_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "specimen" (
    "id" UUID NOT NULL,
    "accession_number" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "latin_title" TEXT NOT NULL DEFAULT '',
    "kind" TEXT NOT NULL,
    "preparation" TEXT NOT NULL,
    "fluid_name" TEXT,
    "fluid_percent" DOUBLE PRECISION,
    "scientific_name" TEXT NOT NULL,
    "human" BOOLEAN NOT NULL,
    "sex" TEXT NOT NULL,
    "age_band" TEXT,
    "side" TEXT NOT NULL,
    "pose" TEXT NOT NULL DEFAULT '',
    "length_mm" INTEGER,
    "width_mm" INTEGER,
    "height_mm" INTEGER,
    "mass_kg" DOUBLE PRECISION,
    "mounted_length_mm" INTEGER,
    "mounted_width_mm" INTEGER,
    "mounted_height_mm" INTEGER,
    "mounted_mass_kg" DOUBLE PRECISION,
    "mass_weighed" BOOLEAN NOT NULL DEFAULT false,
    "parts_at_risk" TEXT NOT NULL DEFAULT '',
    "use" TEXT NOT NULL,
    "light" TEXT NOT NULL DEFAULT 'ordinary',
    "replacement_cost_minor" BIGINT,
    "replacement_cost_currency" CHAR(3),
    "replacement_cost_basis" TEXT,
    "replacement_cost_on" DATE,
    "replacement_cost_by" TEXT,
    "prepared_on" DATE,
    "acquired_on" DATE,
    "publishable" BOOLEAN NOT NULL DEFAULT false,
    "note" TEXT NOT NULL DEFAULT '',
    "whole_id" UUID,
    "series_id" UUID,
    "number_in_series" INTEGER,
    "sheet_thickness_mm" DOUBLE PRECISION,
    "picture_id" UUID,
    "search_key" TEXT NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "recorded_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "specimen_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "component" (
    "id" UUID NOT NULL,
    "specimen_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "detachable" BOOLEAN NOT NULL,

    CONSTRAINT "component_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "former_number" (
    "id" UUID NOT NULL,
    "specimen_id" UUID NOT NULL,
    "number" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "marked_on" TEXT NOT NULL,

    CONSTRAINT "former_number_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "hazard" (
    "specimen_id" UUID NOT NULL,
    "substance" TEXT NOT NULL,
    "percent" DOUBLE PRECISION,
    "note" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "hazard_pkey" PRIMARY KEY ("specimen_id","substance")
);

-- CreateTable
CREATE TABLE "series" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "plane" TEXT NOT NULL,
    "direction" TEXT NOT NULL,
    "thickness_mm" DOUBLE PRECISION NOT NULL,
    "saw_loss_mm" DOUBLE PRECISION NOT NULL,
    "start_level_mm" DOUBLE PRECISION NOT NULL,
    "first_number" INTEGER NOT NULL,
    "sheet_count" INTEGER NOT NULL,
    "embedding" TEXT NOT NULL,
    "imaged_face" TEXT NOT NULL DEFAULT '',
    "shrinkage_area" DOUBLE PRECISION,
    "note" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "series_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "series_landmark" (
    "series_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "level" TEXT NOT NULL,

    CONSTRAINT "series_landmark_pkey" PRIMARY KEY ("series_id","level")
);

-- CreateTable
CREATE TABLE "shown" (
    "specimen_id" UUID NOT NULL,
    "structure_id" TEXT NOT NULL,
    "side" TEXT NOT NULL,
    "seen" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "remark" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "shown_pkey" PRIMARY KEY ("specimen_id","structure_id","side")
);

-- CreateTable
CREATE TABLE "preparation_step" (
    "id" UUID NOT NULL,
    "specimen_id" UUID NOT NULL,
    "step" TEXT NOT NULL,
    "started_on" DATE,
    "ended_on" DATE,
    "note" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "preparation_step_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "place" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "parent_id" UUID,
    "venue_id" UUID,

    CONSTRAINT "place_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "move" (
    "id" UUID NOT NULL,
    "specimen_id" UUID NOT NULL,
    "place_id" UUID NOT NULL,
    "moved_at" TIMESTAMPTZ(6) NOT NULL,
    "moved_by" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "sequence" BIGSERIAL NOT NULL,

    CONSTRAINT "move_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "custody_event" (
    "id" UUID NOT NULL,
    "specimen_id" UUID NOT NULL,
    "sequence" INTEGER NOT NULL,
    "from_party" TEXT,
    "to_party" TEXT NOT NULL,
    "handed_over_at" TIMESTAMPTZ(6) NOT NULL,
    "released_by" TEXT NOT NULL,
    "received_by" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "loan_id" UUID,

    CONSTRAINT "custody_event_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "booking" (
    "id" UUID NOT NULL,
    "specimen_id" UUID NOT NULL,
    "loan_line_id" UUID,
    "purpose" TEXT NOT NULL,
    "strength" TEXT NOT NULL,
    "starts_on" DATE NOT NULL,
    "ends_on" DATE NOT NULL,
    "expires_at" TIMESTAMPTZ(6),
    "released_at" TIMESTAMPTZ(6),
    "booked_by" TEXT NOT NULL,
    "booked_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "booking_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
-- CreateIndex
CREATE INDEX "structure_name_search_key_trigram" ON "structure_name" USING GIN ("search_key" gin_trgm_ops);

-- CreateIndex
CREATE UNIQUE INDEX "structure_name_structure_id_language_text_key" ON "structure_name"("structure_id", "language", "text");

-- CreateIndex
CREATE INDEX "structure_link_parent_id_idx" ON "structure_link"("parent_id");

-- CreateIndex
CREATE INDEX "structure_ancestor_descendant_id_idx" ON "structure_ancestor"("descendant_id");

-- CreateIndex
CREATE INDEX "condition_check_specimen_id_sequence_idx" ON "condition_check"("specimen_id", "sequence");

-- CreateIndex
CREATE INDEX "condition_check_loan_id_idx" ON "condition_check"("loan_id");

-- CreateIndex
CREATE UNIQUE INDEX "finding_check_id_mark_id_key" ON "finding"("check_id", "mark_id");

-- CreateIndex
CREATE UNIQUE INDEX "loan_number_key" ON "loan"("number");

-- CreateIndex
CREATE INDEX "loan_borrower_id_created_at_idx" ON "loan"("borrower_id", "created_at");

-- CreateIndex
CREATE INDEX "loan_ends_on_idx" ON "loan"("ends_on");

-- CreateIndex
CREATE INDEX "loan_line_specimen_id_idx" ON "loan_line"("specimen_id");

-- CreateIndex
CREATE INDEX "loan_line_state_idx" ON "loan_line"("state");

-- CreateIndex
CREATE UNIQUE INDEX "loan_line_loan_id_specimen_id_key" ON "loan_line"("loan_id", "specimen_id");

-- CreateIndex
CREATE INDEX "suitability_run_loan_id_run_at_idx" ON "suitability_run"("loan_id", "run_at");

-- CreateIndex
CREATE INDEX "decision_loan_id_decided_at_idx" ON "decision"("loan_id", "decided_at");

-- CreateIndex
CREATE UNIQUE INDEX "cover_loan_id_policy_number_starts_at_key" ON "cover"("loan_id", "policy_number", "starts_at");

-- CreateIndex
CREATE UNIQUE INDEX "agreement_loan_id_version_key" ON "agreement"("loan_id", "version");

-- CreateIndex
CREATE UNIQUE INDEX "signature_agreement_id_party_key" ON "signature"("agreement_id", "party");

-- CreateIndex
CREATE UNIQUE INDEX "institution_name_key" ON "institution"("name");

-- CreateIndex
CREATE UNIQUE INDEX "venue_institution_id_name_key" ON "venue"("institution_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "passage_venue_id_position_key" ON "passage"("venue_id", "position");

-- CreateIndex
CREATE UNIQUE INDEX "licence_venue_id_kind_number_key" ON "licence"("venue_id", "kind", "number");

-- CreateIndex
CREATE UNIQUE INDEX "account_email_key" ON "account"("email");

-- CreateIndex
CREATE INDEX "account_institution_id_idx" ON "account"("institution_id");

-- CreateIndex
CREATE INDEX "audit_entry_table_name_row_key_id_idx" ON "audit_entry"("table_name", "row_key", "id");

-- CreateIndex
CREATE INDEX "audit_entry_actor_id_idx" ON "audit_entry"("actor", "id");

-- CreateIndex
CREATE INDEX "donor_look_donor_code_idx" ON "sealed"."donor_look"("donor_code");

-- CreateIndex
CREATE INDEX "consent_donor_code_idx" ON "consent"("donor_code");

-- CreateIndex
CREATE INDEX "specimen_donor_donor_code_idx" ON "specimen_donor"("donor_code");

-- CreateIndex
CREATE UNIQUE INDEX "permit_specimen_id_kind_number_key" ON "permit"("specimen_id", "kind", "number");

-- CreateIndex
CREATE UNIQUE INDEX "crate_code_key" ON "crate"("code");

-- CreateIndex
CREATE INDEX "crate_loan_id_idx" ON "crate"("loan_id");

-- CreateIndex
CREATE INDEX "crate_content_specimen_id_idx" ON "crate_content"("specimen_id");

-- CreateIndex
CREATE UNIQUE INDEX "crate_content_crate_id_position_key" ON "crate_content"("crate_id", "position");

-- CreateIndex
CREATE UNIQUE INDEX "stage_link_hash_key" ON "stage"("link_hash");

-- CreateIndex
CREATE UNIQUE INDEX "stage_loan_id_direction_key" ON "stage"("loan_id", "direction");

-- CreateIndex
CREATE INDEX "crate_event_crate_id_sequence_idx" ON "crate_event"("crate_id", "sequence");

-- CreateIndex
CREATE UNIQUE INDEX "auth_user_email_key" ON "auth_user"("email");

-- CreateIndex
CREATE UNIQUE INDEX "auth_session_token_key" ON "auth_session"("token");

-- CreateIndex
CREATE INDEX "auth_session_userId_idx" ON "auth_session"("userId");

-- CreateIndex
CREATE INDEX "auth_secret_userId_idx" ON "auth_secret"("userId");

-- CreateIndex
CREATE INDEX "auth_verification_identifier_idx" ON "auth_verification"("identifier");

-- CreateIndex
CREATE UNIQUE INDEX "auth_rate_limit_key_key" ON "auth_rate_limit"("key");

-- CreateIndex
CREATE UNIQUE INDEX "specimen_accession_number_key" ON "specimen"("accession_number");

-- CreateIndex
CREATE INDEX "specimen_whole_id_idx" ON "specimen"("whole_id");

-- CreateIndex
CREATE INDEX "specimen_kind_accession_number_idx" ON "specimen"("kind", "accession_number");

-- CreateIndex
CREATE INDEX "specimen_preparation_accession_number_idx" ON "specimen"("preparation", "accession_number");

-- CreateIndex
CREATE INDEX "specimen_search_key_trigram" ON "specimen" USING GIN ("search_key" gin_trgm_ops);

-- CreateIndex
CREATE UNIQUE INDEX "specimen_series_id_number_in_series_key" ON "specimen"("series_id", "number_in_series");

-- CreateIndex
CREATE UNIQUE INDEX "component_specimen_id_name_key" ON "component"("specimen_id", "name");

-- CreateIndex
CREATE INDEX "former_number_number_idx" ON "former_number"("number");

-- CreateIndex
CREATE UNIQUE INDEX "former_number_specimen_id_number_kind_key" ON "former_number"("specimen_id", "number", "kind");

-- CreateIndex
CREATE UNIQUE INDEX "series_code_key" ON "series"("code");

-- CreateIndex
CREATE INDEX "shown_structure_id_idx" ON "shown"("structure_id");

-- CreateIndex
CREATE INDEX "preparation_step_specimen_id_idx" ON "preparation_step"("specimen_id");

-- CreateIndex
CREATE UNIQUE INDEX "place_code_key" ON "place"("code");

-- CreateIndex
CREATE INDEX "move_specimen_id_sequence_idx" ON "move"("specimen_id", "sequence");

-- CreateIndex
CREATE UNIQUE INDEX "custody_event_specimen_id_sequence_key" ON "custody_event"("specimen_id", "sequence");

-- CreateIndex
CREATE INDEX "booking_loan_line_id_idx" ON "booking"("loan_line_id");

-- CreateIndex
CREATE INDEX "booking_expires_at_idx" ON "booking"("expires_at");

-- AddForeignKey
ALTER TABLE "structure_name" ADD CONSTRAINT "structure_name_structure_id_fkey" FOREIGN KEY ("structure_id") REFERENCES "structure"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "structure_link" ADD CONSTRAINT "structure_link_child_id_fkey" FOREIGN KEY ("child_id") REFERENCES "structure"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "structure_link" ADD CONSTRAINT "structure_link_parent_id_fkey" FOREIGN KEY ("parent_id") REFERENCES "structure"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "structure_ancestor" ADD CONSTRAINT "structure_ancestor_ancestor_id_fkey" FOREIGN KEY ("ancestor_id") REFERENCES "structure"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "structure_ancestor" ADD CONSTRAINT "structure_ancestor_descendant_id_fkey" FOREIGN KEY ("descendant_id") REFERENCES "structure"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "condition_check" ADD CONSTRAINT "condition_check_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "condition_check" ADD CONSTRAINT "condition_check_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "finding" ADD CONSTRAINT "finding_check_id_fkey" FOREIGN KEY ("check_id") REFERENCES "condition_check"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "loan" ADD CONSTRAINT "loan_borrower_id_fkey" FOREIGN KEY ("borrower_id") REFERENCES "institution"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "loan" ADD CONSTRAINT "loan_venue_id_fkey" FOREIGN KEY ("venue_id") REFERENCES "venue"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "loan_line" ADD CONSTRAINT "loan_line_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "loan_line" ADD CONSTRAINT "loan_line_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "suitability_run" ADD CONSTRAINT "suitability_run_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "decision" ADD CONSTRAINT "decision_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "cover" ADD CONSTRAINT "cover_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "agreement" ADD CONSTRAINT "agreement_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "signature" ADD CONSTRAINT "signature_agreement_id_fkey" FOREIGN KEY ("agreement_id") REFERENCES "agreement"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "venue" ADD CONSTRAINT "venue_institution_id_fkey" FOREIGN KEY ("institution_id") REFERENCES "institution"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "passage" ADD CONSTRAINT "passage_venue_id_fkey" FOREIGN KEY ("venue_id") REFERENCES "venue"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "licence" ADD CONSTRAINT "licence_venue_id_fkey" FOREIGN KEY ("venue_id") REFERENCES "venue"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "account" ADD CONSTRAINT "account_id_fkey" FOREIGN KEY ("id") REFERENCES "auth_user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "account" ADD CONSTRAINT "account_institution_id_fkey" FOREIGN KEY ("institution_id") REFERENCES "institution"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sealed"."donor_identity" ADD CONSTRAINT "donor_identity_donor_code_fkey" FOREIGN KEY ("donor_code") REFERENCES "donor"("code") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sealed"."donor_look" ADD CONSTRAINT "donor_look_donor_code_fkey" FOREIGN KEY ("donor_code") REFERENCES "donor"("code") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "consent" ADD CONSTRAINT "consent_donor_code_fkey" FOREIGN KEY ("donor_code") REFERENCES "donor"("code") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "consent_answer" ADD CONSTRAINT "consent_answer_consent_id_fkey" FOREIGN KEY ("consent_id") REFERENCES "consent"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "specimen_donor" ADD CONSTRAINT "specimen_donor_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "specimen_donor" ADD CONSTRAINT "specimen_donor_donor_code_fkey" FOREIGN KEY ("donor_code") REFERENCES "donor"("code") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "permit" ADD CONSTRAINT "permit_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "title" ADD CONSTRAINT "title_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "crate" ADD CONSTRAINT "crate_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "crate_content" ADD CONSTRAINT "crate_content_crate_id_fkey" FOREIGN KEY ("crate_id") REFERENCES "crate"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "crate_content" ADD CONSTRAINT "crate_content_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stage" ADD CONSTRAINT "stage_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "crate_event" ADD CONSTRAINT "crate_event_crate_id_fkey" FOREIGN KEY ("crate_id") REFERENCES "crate"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "crate_event" ADD CONSTRAINT "crate_event_stage_id_fkey" FOREIGN KEY ("stage_id") REFERENCES "stage"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "crate_count" ADD CONSTRAINT "crate_count_event_id_fkey" FOREIGN KEY ("event_id") REFERENCES "crate_event"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "crate_count" ADD CONSTRAINT "crate_count_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "auth_session" ADD CONSTRAINT "auth_session_userId_fkey" FOREIGN KEY ("userId") REFERENCES "auth_user"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "auth_secret" ADD CONSTRAINT "auth_secret_userId_fkey" FOREIGN KEY ("userId") REFERENCES "auth_user"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "specimen" ADD CONSTRAINT "specimen_whole_id_fkey" FOREIGN KEY ("whole_id") REFERENCES "specimen"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "specimen" ADD CONSTRAINT "specimen_series_id_fkey" FOREIGN KEY ("series_id") REFERENCES "series"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "specimen" ADD CONSTRAINT "specimen_picture_id_fkey" FOREIGN KEY ("picture_id") REFERENCES "stored_file"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "component" ADD CONSTRAINT "component_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "former_number" ADD CONSTRAINT "former_number_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hazard" ADD CONSTRAINT "hazard_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "series_landmark" ADD CONSTRAINT "series_landmark_series_id_fkey" FOREIGN KEY ("series_id") REFERENCES "series"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "shown" ADD CONSTRAINT "shown_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "shown" ADD CONSTRAINT "shown_structure_id_fkey" FOREIGN KEY ("structure_id") REFERENCES "structure"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "preparation_step" ADD CONSTRAINT "preparation_step_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "place" ADD CONSTRAINT "place_parent_id_fkey" FOREIGN KEY ("parent_id") REFERENCES "place"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "place" ADD CONSTRAINT "place_venue_id_fkey" FOREIGN KEY ("venue_id") REFERENCES "venue"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "move" ADD CONSTRAINT "move_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "move" ADD CONSTRAINT "move_place_id_fkey" FOREIGN KEY ("place_id") REFERENCES "place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "custody_event" ADD CONSTRAINT "custody_event_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "booking" ADD CONSTRAINT "booking_specimen_id_fkey" FOREIGN KEY ("specimen_id") REFERENCES "specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "booking" ADD CONSTRAINT "booking_loan_line_id_fkey" FOREIGN KEY ("loan_line_id") REFERENCES "loan_line"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- CreateIndex
CREATE INDEX "booking_specimen_id_starts_on_idx" ON "booking"("specimen_id", "starts_on");

-- CreateIndex
CREATE UNIQUE INDEX "consent_one_current" ON "consent"("donor_code") WHERE (superseded_by_id IS NULL);

-- CreateIndex
CREATE INDEX "permit_valid_until_idx" ON "permit"("valid_until");

-- CreateIndex
CREATE INDEX "place_venue_id_idx" ON "place"("venue_id");

-- CreateIndex
CREATE INDEX "move_place_id_idx" ON "move"("place_id");
