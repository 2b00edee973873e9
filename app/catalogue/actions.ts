"use server";
/** The choice of somebody who is not signed in. */

import { redirect } from "next/navigation";
import { keepChoice } from "#app/catalogue/choice.ts";

/** @param search the question of the page that is shown, to come back to */
export async function choosePictures(shows: boolean, search: string): Promise<void> {
  await keepChoice(shows);
  redirect(search === "" ? "/catalogue" : `/catalogue?${new URLSearchParams(search)}`);
}
