/** The loan's file of one request: asked for by the title and by the page, read once. */
import { cache } from "react";
import { getLoan } from "#lib/loans/queries.ts";

export const readLoan = cache(getLoan);
