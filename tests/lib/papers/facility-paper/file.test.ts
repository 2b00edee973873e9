import { extractText, getDocumentProxy } from "unpdf";
import { describe, expect, test } from "vitest";
import { facilityPaperHash, paintFacilityPaper } from "#lib/papers/facility-paper/file.ts";
import { type PaperLanguage, paperLanguages } from "#lib/papers/languages.ts";
import { type PaperSize, paperSizes, sheets } from "#lib/papers/sheet.ts";
import { aPaper } from "#tests/lib/papers/facility-paper/facility-cases.ts";

const paint = (language: PaperLanguage = "en", size: PaperSize = "letter") =>
  paintFacilityPaper(aPaper(), size, { language, author: "Port Selwyn" });

const golden: Readonly<Record<PaperLanguage, readonly string[]>> = {
  en: [
    "Facility report: Dissection room 2",
    "Harbour Road 4, Port Selwyn, Norway",
    "Version 2, reported on 4 May 2026 by Bela Registrar; counts until 4 May 2028",
    "Construction masonry Built in 1908 Last renovated in not known",
    "Load that the floor bears, kg/m² 1,500",
    "Set point of relative humidity, % 48.5",
    "North door door 1,400, then 1,200 2,100 – –",
    "public display PD-7741 Harbour county Bela Registrar 1 January 2029",
  ],
  de: [
    "Bericht über das Gebäude: Dissection room 2",
    "Harbour Road 4, Port Selwyn, Norwegen",
    "Fassung 2, angegeben am 4. Mai 2026 von Bela Registrar; sie gilt bis 4. Mai 2028",
    "Bauweise Mauerwerk Baujahr 1908 Zuletzt erneuert im Jahr nicht bekannt",
    "Tragfähigkeit des Bodens, kg/m² 1.500",
    "Sollwert der relativen Feuchte, % 48,5",
    "North door Tür 1.400, dann 1.200 2.100 – –",
    "öffentliches Zeigen PD-7741 Harbour county Bela Registrar 1. Januar 2029",
  ],
  fr: [
    "Rapport sur le bâtiment : Dissection room 2",
    "Harbour Road 4, Port Selwyn, Norvège",
    "Version 2, établie le 4 mai 2026 par Bela Registrar ; elle vaut jusqu’au 4 mai 2028",
    "Mode de construction maçonnerie Construit en 1908 Rénové en dernier en non connu",
    "Charge que le sol supporte, kg/m² 1 500",
    "Consigne d’humidité relative, % 48,5",
    "North door porte 1 400, puis 1 200 2 100 – –",
    "présentation au public PD-7741 Harbour county Bela Registrar 1er janvier 2029",
  ],
};

describe.each(paperLanguages)("in %s", (language) => {
  test.each(paperSizes)("the file reads back on %s, with its fingerprint on every page", async (size) => {
    const file = await getDocumentProxy(new Uint8Array(await paint(language, size)));
    const [width, height] = (await file.getPage(1)).view.slice(2);
    expect([width, height]).toEqual([sheets[size].widthPt, sheets[size].heightPt]);
    expect((await file.getMetadata()).info).toMatchObject({ Language: language });
    const { text } = await extractText(file);
    for (const page of text) expect(page).toContain(facilityPaperHash(aPaper()));
    const said = text.join(" ").normalize("NFKC").replace(/\s+/g, " ");
    for (const line of golden[language]) expect(said).toContain(line.normalize("NFKC"));
  });
});

test("the same version gives the same bytes, another answer another fingerprint", async () => {
  const [first, second] = await Promise.all([paint(), paint()]);
  expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
  expect(facilityPaperHash(aPaper())).not.toBe(facilityPaperHash(aPaper({ version: 3 })));
});
