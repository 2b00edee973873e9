import { describe, expect, it } from "vitest";
import {
  animalOf,
  chooseMotif,
  type DrawingRequest,
  isHuman,
  type Motif,
  neutralMotifs,
  titlesOf,
} from "#lib/specimens/drawing/choose.ts";

const plain: DrawingRequest = {
  kind: "organ",
  preparation: "silicone-impregnated",
  species: "Homo sapiens",
  title: "",
  latinTitle: "",
  side: "median",
  shown: [],
  sheet: null,
  seed: "AN 1",
};
const motifOf = (facts: Partial<DrawingRequest>) => chooseMotif({ ...plain, ...facts });

const bone = { kind: "skeleton or bone", preparation: "dry" } as const;
const region = { kind: "body region" } as const;
const cast = { kind: "cast", preparation: "corrosion cast" } as const;
const sheet = { kind: "sheet", preparation: "epoxy sheet" } as const;
const whole = { kind: "whole body" } as const;

const known: readonly (readonly [title: string, facts: Partial<DrawingRequest>, motif: Motif])[] = [
  ["Heart", {}, "heart"],
  ["Heart of an adult, opened", {}, "heart-opened"],
  ["Right kidney, halved", { side: "right" }, "kidney-halved"],
  ["Left lung, hilum", { side: "left" }, "lung"],
  ["Lungs", {}, "lungs"],
  ["Leber", { latinTitle: "Hepar" }, "liver"],
  ["Herz", { latinTitle: "Cor" }, "heart"],
  ["Right upper limb, neurovascular dissection", { ...region, side: "right" }, "upper-limb"],
  ["Right knee joint, opened", {}, "knee"],
  ["Femur", bone, "femur"],
  ["Skull of a newborn", bone, "skull-newborn"],
  ["Articulated skeleton", { ...bone, preparation: "mounted skeleton" }, "skeleton"],
  ["Bronchial tree", cast, "cast-lungs"],
  ["Vessels of the kidney", cast, "cast-kidney"],
  ["Transverse sheet of a trunk, level L2", sheet, "trunk-sheet"],
  ["Whole body, seated, nervous system", whole, "seated-body"],
  ["Horse, muscles", { ...whole, species: "Equus caballus" }, "animal"],
  ["Hen, mounted skeleton", { ...bone, species: "Gallus gallus domesticus" }, "animal-skeleton"],
  ["Horse, left foot", { ...region, species: "Equus caballus" }, "equine-foot"],
  ["Kidney", { kind: "histological slide", preparation: "slide" }, "slide"],
];

const unknown: readonly (readonly [
  what: string,
  title: string,
  facts: Partial<DrawingRequest>,
  motif: Motif,
])[] = [
  ["a part of an organ", "Heart valve", {}, "neutral-stand"],
  ["a vessel of an organ", "Renal artery", {}, "neutral-stand"],
  ["what only lies at an organ", "Ligament of the liver", {}, "neutral-stand"],
  ["an organ of an animal", "Heart of a dog", { species: "Canis familiaris" }, "neutral-stand"],
  ["the stomach of an animal", "Stomach", { species: "Sus scrofa" }, "neutral-stand"],
  [
    "an animal like none of its own",
    "Axolotl, muscles",
    { ...whole, species: "Ambystoma mexicanum" },
    "neutral-plinth",
  ],
  ["a bone of an animal", "Femur", { ...bone, species: "Equus caballus" }, "closed-box"],
  ["another bone", "Humerus", bone, "closed-box"],
  ["a child's bone", "Skeleton of a child", { ...bone, preparation: "mounted skeleton" }, "neutral-stand"],
  ["a child's organ", "Heart of a newborn", {}, "neutral-stand"],
  ["a lung of no side", "Lung", { side: "not applicable" }, "neutral-stand"],
  ["a forearm not seen from behind", "Left forearm and hand", region, "neutral-stand"],
  ["a body in no known pose", "Whole body", whole, "neutral-plinth"],
  ["what is kept wet", "Placenta", { preparation: "fluid-preserved" }, "neutral-jar"],
  ["a cast of something else", "Arteries of a right hand", cast, "neutral-dome"],
  ["a sheet of something else", "Thigh, sheet 3", sheet, "neutral-sheet"],
  ["a coronal sheet at another place", "Coronal sheet of a brain", sheet, "neutral-sheet"],
  ["what no drawing knows", "Something", {}, "neutral-stand"],
];

describe("choosing a drawing", () => {
  it.each(known)("draws %s, %j as %s", (title, facts, motif) => {
    expect(motifOf({ title, ...facts })).toBe(motif);
  });

  it.each(unknown)("says only how it is kept of %s", (_, title, facts, motif) => {
    expect(motifOf({ title, ...facts })).toBe(motif);
    expect(neutralMotifs).toContain(motif);
  });

  it("takes the region of a sheet from its series, whatever its own title says", () => {
    const place = {
      code: "SR 03",
      title: "Trunk, transverse sheets",
      plane: "transverse",
      imagedFace: "lower",
      number: 67,
      vertebra: 20,
      fromMedianMm: null,
    } as const;
    const head = { structure: "head-of-pancreas", latin: "caput pancreatis" };
    for (const title of ["Trunk, transverse sheet 67", "Head of the pancreas", ""])
      expect(motifOf({ ...sheet, title, sheet: place, shown: [head] })).toBe("trunk-sheet");
  });

  it("does not let structures decide what the title leaves open", () => {
    const shown = [{ structure: "kidney", latin: "ren" }];
    expect(motifOf({ title: "Dissection", shown })).toBe("neutral-stand");
  });

  it("reads a title without side and article", () => {
    expect(titlesOf({ title: "The right Upper-limb", latinTitle: " Membrum superius" })).toEqual([
      "upper limb",
      "membrum superius",
    ]);
  });

  it("takes a specimen without a species for a human one", () => {
    expect(isHuman("")).toBe(true);
    expect(isHuman("Homo sapiens")).toBe(true);
    expect(isHuman("Equus caballus")).toBe(false);
  });

  it.each([
    ["Ovis aries", "sheep"],
    ["Falco peregrinus", "falcon"],
    ["Lutra lutra", "otter"],
    ["Cyprinus carpio", "fish"],
    ["Equus asinus", null],
    ["Strix aluco", null],
    ["Ambystoma mexicanum", null],
  ])("draws %s as %s", (species, animal) => expect(animalOf(species)).toBe(animal));
});
