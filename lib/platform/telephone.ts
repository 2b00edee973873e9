/**
 * A telephone number as people write it. It is kept as it was typed, because every
 * country groups its digits in another way; it only has to be one that can be rung.
 */
import { z } from "zod";

/** Digits with what stands between them, and an extension behind. */
const written = /^[\d+(][\d\p{Zs}()+\-/.]*(?:ext\.?\p{Zs}?\d+)?$/iu;
const fewestDigits = 3;

export function isTelephone(text: string): boolean {
  return written.test(text) && text.replace(/\D/g, "").length >= fewestDigits;
}

export const Telephone = z
  .string()
  .trim()
  .min(1, { abort: true })
  .max(40)
  .refine(isTelephone, "telephone.unreadable");
export type Telephone = z.infer<typeof Telephone>;

/** In a record that may be saved half done. */
export const TelephoneOrNothing = z
  .string()
  .trim()
  .max(40)
  .refine((text) => text === "" || isTelephone(text), "telephone.unreadable");
