/** The program's own words about the sources of the limits, in German; titles of what was published stay as they are. */
import type { SourceWords } from "#lib/papers/english-sources.ts";

export const germanSources: SourceWords = {
  "Common practice of the trade": "Übliche Praxis",
  "default of this program; a centre may set its own":
    "Vorgabe dieses Programms, ein Haus kann eigene setzen",
  "16–25 °C, 40–60 % RH, at most 10 % RH in 24 h": "16–25 °C, 40–60 % rF, höchstens 10 % rF in 24 h",
  "class B, outer limits 30–70 % RH, up to 30 °C": "Klasse B, äußere Grenzen 30–70 % rF, bis 30 °C",
  "yellowing of epoxy sheets": "Vergilben von Scheiben aus Epoxid",
  "cure goes on in ultraviolet and sunlight": "Härtung geht in Ultraviolett und Sonnenlicht weiter",
  "RH below 50 %; 30 lx with 1 500 µW/m², that is 50 µW/lm":
    "rF unter 50 %; 30 lx bei 1 500 µW/m², das sind 50 µW/lm",
  "about 18 °C, never below 15 °C": "etwa 18 °C, nie unter 15 °C",
  "protect from visible light and ultraviolet": "vor sichtbarem Licht und Ultraviolett schützen",
  "low and changing humidity cracks bone, teeth more":
    "niedrige und wechselnde Feuchte reißt Knochen, Zähne noch mehr",
  "18–21 °C, 45–55 % RH": "18–21 °C, 45–55 % rF",
  "about 18 ± 2 °C, 50 ± 5 % RH, at most 50 lx": "etwa 18 ± 2 °C, 50 ± 5 % rF, höchstens 50 lx",
  "little biological activity below 50 % RH": "wenig biologische Aktivität unter 50 % rF",
  "low responsivity, 200 lx, 600 000 lx·h a year; bone, horn, ivory":
    "geringe Empfindlichkeit, 200 lx, 600 000 lx·h im Jahr; Knochen, Horn, Elfenbein",
  "medium responsivity, 50 lx, 150 000 lx·h a year; natural history":
    "mittlere Empfindlichkeit, 50 lx, 150 000 lx·h im Jahr; Naturkunde",
  "high responsivity, 50 lx, 15 000 lx·h a year": "hohe Empfindlichkeit, 50 lx, 15 000 lx·h im Jahr",
  "Hydrolysis of ester links in damp": "Hydrolyse von Esterbindungen in Feuchte",
  "Glass transition of epoxy cured at room temperature, about 45–60 °C":
    "Glasübergang von bei Raumtemperatur gehärtetem Epoxid, etwa 45–60 °C",
  "blocks of the same resin: yellowing, cracking, loss of transparency":
    "Blöcke aus demselben Harz: Vergilben, Risse, Verlust der Durchsicht",
};
