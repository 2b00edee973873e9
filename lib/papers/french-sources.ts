/** The program's own words about the sources of the limits, in French; titles of what was published stay as they are. */
import type { SourceWords } from "#lib/papers/english-sources.ts";

export const frenchSources: SourceWords = {
  "Common practice of the trade": "Pratique courante",
  "default of this program; a centre may set its own":
    "valeur de ce programme, une maison peut fixer les siennes",
  "16–25 °C, 40–60 % RH, at most 10 % RH in 24 h": "16–25 °C, 40–60 % HR, au plus 10 % HR en 24 h",
  "class B, outer limits 30–70 % RH, up to 30 °C": "classe B, limites extérieures 30–70 % HR, jusqu’à 30 °C",
  "yellowing of epoxy sheets": "jaunissement des coupes en époxy",
  "cure goes on in ultraviolet and sunlight": "le durcissement continue sous ultraviolet et soleil",
  "RH below 50 %; 30 lx with 1 500 µW/m², that is 50 µW/lm":
    "HR sous 50 %\u00A0; 30 lx avec 1 500 µW/m², soit 50 µW/lm",
  "about 18 °C, never below 15 °C": "environ 18 °C, jamais sous 15 °C",
  "protect from visible light and ultraviolet": "protéger de la lumière visible et de l’ultraviolet",
  "low and changing humidity cracks bone, teeth more":
    "une humidité basse ou changeante fend l’os, et plus encore les dents",
  "18–21 °C, 45–55 % RH": "18–21 °C, 45–55 % HR",
  "about 18 ± 2 °C, 50 ± 5 % RH, at most 50 lx": "environ 18 ± 2 °C, 50 ± 5 % HR, au plus 50 lx",
  "little biological activity below 50 % RH": "peu d’activité biologique sous 50 % HR",
  "low responsivity, 200 lx, 600 000 lx·h a year; bone, horn, ivory":
    "faible sensibilité, 200 lx, 600 000 lx·h par an\u00A0; os, corne, ivoire",
  "medium responsivity, 50 lx, 150 000 lx·h a year; natural history":
    "sensibilité moyenne, 50 lx, 150 000 lx·h par an\u00A0; histoire naturelle",
  "high responsivity, 50 lx, 15 000 lx·h a year": "forte sensibilité, 50 lx, 15 000 lx·h par an",
  "Hydrolysis of ester links in damp": "Hydrolyse des liaisons ester à l’humidité",
  "Glass transition of epoxy cured at room temperature, about 45–60 °C":
    "Transition vitreuse de l’époxy durci à température ambiante, environ 45–60 °C",
  "blocks of the same resin: yellowing, cracking, loss of transparency":
    "blocs de la même résine\u00A0: jaunissement, fissures, perte de transparence",
};
