/**
 * Who is asking. Every query and command takes a viewer first; nothing in the
 * house knows of sessions or cookies.
 */
import { z } from "zod";

export const houseRoles = [
  "registrar",
  "curator",
  "conservator",
  "collection manager",
  "donor officer",
  "inspector",
  "administrator",
] as const;
export const borrowerRoles = ["lecturer", "borrower registrar"] as const;
export const roles = [...houseRoles, ...borrowerRoles] as const;

export const Role = z.enum(roles);
export type Role = z.infer<typeof Role>;

export type Viewer = {
  accountId: string;
  name: string;
  email: string;
  roles: readonly Role[];
  /** The one institution of a borrower; null for the house's own people. */
  institutionId: string | null;
};

/** The program acting by itself: reference data, the demo scenario, expiry of holds. */
export const programViewer: Viewer = {
  accountId: "program",
  name: "Program",
  email: "",
  roles: houseRoles,
  institutionId: null,
};

/** Whoever is not signed in, before the catalogue that a centre has opened to the public. */
export const publicViewer: Viewer = {
  accountId: "public",
  name: "",
  email: "",
  roles: [],
  institutionId: null,
};

export function isOfTheHouse(viewer: Viewer): boolean {
  return viewer.roles.some((role) => (houseRoles as readonly Role[]).includes(role));
}

export function isBorrower(viewer: Viewer): boolean {
  return viewer.roles.some((role) => (borrowerRoles as readonly Role[]).includes(role));
}
