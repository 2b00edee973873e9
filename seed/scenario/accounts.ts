/**
 * The people who sign in, all invented: one for each role of the house, a lecturer
 * for each borrower and a registrar for those who sign agreements. Addresses end
 * in `.example`, which no mail reaches. `seed/sign-ins.json` lists the same people.
 */
import type { Role } from "#lib/people/viewer.ts";
import type { BorrowerKey } from "#seed/scenario/borrowers.ts";

export const demoPassword = "demo-anatheca-2026";

export type ScenarioAccount = { name: string; email: string; role: Role; borrower: BorrowerKey | null };

const house = (name: string, email: string, role: Role): ScenarioAccount => ({
  name,
  email,
  role,
  borrower: null,
});
const outside = (
  name: string,
  email: string,
  role: "lecturer" | "borrower registrar",
  borrower: BorrowerKey,
): ScenarioAccount => ({ name, email, role, borrower });

export const accounts = {
  registrar: house("Maren Holtvik", "maren.holtvik@halmren.example", "registrar"),
  curator: house("Tomas Elsward", "tomas.elsward@halmren.example", "curator"),
  conservator: house("Ines Calderwood", "ines.calderwood@halmren.example", "conservator"),
  "collection manager": house("Anneli Vasterby", "anneli.vasterby@halmren.example", "collection manager"),
  "donor officer": house("Jorun Lindqvale", "jorun.lindqvale@halmren.example", "donor officer"),
  inspector: house("Petra Okonsen", "petra.okonsen@inspectorate.example", "inspector"),
  administrator: house("Silas Brennmo", "silas.brennmo@halmren.example", "administrator"),
  "kestrel lecturer": outside("Orla Fennimarsh", "orla.fennimarsh@kestrelbay.example", "lecturer", "kestrel"),
  "kestrel registrar": outside(
    "Cathal Dunmarra",
    "cathal.dunmarra@kestrelbay.example",
    "borrower registrar",
    "kestrel",
  ),
  "selwyn lecturer": outside("Imogen Tarrowby", "imogen.tarrowby@portselwyn.example", "lecturer", "selwyn"),
  "selwyn registrar": outside(
    "Rafe Pellingshaw",
    "rafe.pellingshaw@portselwyn.example",
    "borrower registrar",
    "selwyn",
  ),
  "vesterlunde lecturer": outside(
    "Frederik Aamundby",
    "frederik.aamundby@vesterlunde.example",
    "lecturer",
    "vesterlunde",
  ),
  "vesterlunde registrar": outside(
    "Lone Birkvang",
    "lone.birkvang@vesterlunde.example",
    "borrower registrar",
    "vesterlunde",
  ),
  "norrvassa lecturer": outside(
    "Sanna Evervik",
    "sanna.evervik@norrvassa-museum.example",
    "lecturer",
    "norrvassa",
  ),
  "norrvassa registrar": outside(
    "Goran Tellvik",
    "goran.tellvik@norrvassa-museum.example",
    "borrower registrar",
    "norrvassa",
  ),
  "frame lecturer": outside("Wout Terhavik", "wout.terhavik@livingframe.example", "lecturer", "frame"),
  "tarnmoor lecturer": outside("Bethan Scarwick", "bethan.scarwick@tarnmoor.example", "lecturer", "tarnmoor"),
} satisfies Record<string, ScenarioAccount>;
export type AccountKey = keyof typeof accounts;
