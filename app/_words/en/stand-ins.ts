/** Words of specimens that stand in for another, in English. */
export const standInWords = {
  title: (number: string) => `What could stand in for ${number}`,
  link: "Stand-ins",
  about:
    "Specimens that are free for all days of this loan, those first that show most of the same. The one that you choose is noted on the request and this one is taken off it; what the rules say of it is judged then.",
  nothingShown: "Nothing is recorded of what this specimen shows, so that nothing can be compared with it.",
  none: "No specimen that is free on these days shows any of the same.",
  caption: "Stand-ins, those that show most of the same first",
  number: "Number",
  what: "Title",
  preparation: "Preparation",
  use: "Use",
  shared: "Shows of the same",
  sharedOf: (shared: number, all: number) => `${shared} of ${all}`,
  act: "Act",
  takeFor: (number: string) => `Put ${number} in its place`,
  back: (number: string) => `Back to loan ${number}`,
} as const;
