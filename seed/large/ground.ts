/**
 * What a large collection stands on and refers to: the centre, some places, some
 * donors with full consent, and the structures of each region. Made where it is
 * missing, by the owner, with its entries in the audit like everything else.
 */
import { randomInt } from "node:crypto";
import type pg from "pg";
import { donorCode } from "#lib/provenance/donor-code.ts";
import { scopes } from "#lib/provenance/schema.ts";
import { idMaker } from "#seed/large/numbers.ts";
import { subjects } from "#seed/large/subjects.ts";
import { centre } from "#seed/scenario/centre.ts";
import { full } from "#seed/scenario/consent-forms.ts";

const placeCount = 40;
const donorCount = 200;

export type Ground = {
  structures: Map<string, { id: string; paired: boolean }[]>;
  placeIds: string[];
  donorCodes: string[];
};

/** @throws {Error} with a sentence when the vocabularies are not there */
export async function readStructures(client: pg.ClientBase): Promise<Ground["structures"]> {
  const regions = [...new Set(subjects.map((subject) => subject.region))];
  const { rows } = await client.query<{ region: string; id: string; paired: boolean }>(
    `SELECT DISTINCT above.ancestor_id AS region, structure.id, structure.paired
     FROM structure_ancestor above JOIN structure ON structure.id = above.descendant_id
     WHERE above.ancestor_id = ANY($1::text[]) AND structure.kind = 'structure' AND NOT structure.animal
     ORDER BY 1, 2`,
    [regions],
  );
  const structures: Ground["structures"] = new Map();
  for (const { region, id, paired } of rows) {
    const list = structures.get(region) ?? [];
    list.push({ id, paired });
    structures.set(region, list);
  }
  const bare = regions.filter((region) => !structures.has(region));
  if (bare.length > 0)
    throw new Error(
      `The vocabularies are not loaded (nothing lies in ${bare.join(", ")}): start the program on this database once, or run seed/reference.ts.`,
    );
  return structures;
}

/** The places and donors of a large collection, the same ones when it is filled again. */
export async function layGround(client: pg.ClientBase, beganAtMs: number): Promise<Ground> {
  const structures = await readStructures(client);
  await client.query("INSERT INTO setting (key, value) VALUES ('centre', $1) ON CONFLICT (key) DO NOTHING", [
    centre,
  ]);
  const placeId = idMaker(beganAtMs, 6);
  const codes = Array.from({ length: placeCount }, (_, index) => `L-${String(index + 1).padStart(2, "0")}`);
  await client.query(
    `INSERT INTO place (id, code, name, kind)
     SELECT id, code, 'Large store, rack ' || substring(code FROM 3), 'shelf'
     FROM unnest($1::uuid[], $2::text[]) AS made (id, code) ON CONFLICT (code) DO NOTHING`,
    [codes.map((_, index) => placeId(index)), codes],
  );
  const places = await client.query<{ id: string }>(
    "SELECT id FROM place WHERE code = ANY($1::text[]) ORDER BY code",
    [codes],
  );
  const drawn = [...new Set(Array.from({ length: donorCount }, () => donorCode(randomInt)))];
  const donors = await client.query<{ code: string }>(
    "INSERT INTO donor (code) SELECT unnest($1::text[]) ON CONFLICT DO NOTHING RETURNING code",
    [drawn],
  );
  const donorCodes = donors.rows.map(({ code }) => code);
  const consentId = idMaker(beganAtMs, 7);
  const consentIds = donorCodes.map((_, index) => consentId(index));
  await client.query(
    `INSERT INTO consent (id, donor_code, basis, form_version, signed_on, witness_count, evidence_place, audience,
       territories_allowed, territories_refused, non_commercial_only, disposition)
     SELECT id, code, 'donor in life', 'Form 4, 2008', DATE '2010-01-15', 2, 'Donor archive, large series', 'anyone',
       '{}', '{}', true, 'retain indefinitely'
     FROM unnest($1::uuid[], $2::text[]) AS made (id, code)`,
    [consentIds, donorCodes],
  );
  await client.query(
    `INSERT INTO consent_answer (consent_id, scope, answer)
     SELECT id, scope, answer FROM unnest($1::uuid[]) AS made (id)
     CROSS JOIN unnest($2::text[], $3::text[]) AS said (scope, answer)`,
    [consentIds, [...scopes], scopes.map((scope) => full[scope])],
  );
  return { structures, placeIds: places.rows.map(({ id }) => id), donorCodes };
}
