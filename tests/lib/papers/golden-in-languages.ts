/** What each kind of paper says of one case in German and in French, in the order of reading. */
import type { PaperLanguage } from "#lib/papers/languages.ts";
import type { PaperKind } from "#lib/papers/paper-kinds.ts";

type Foreign = Exclude<PaperLanguage, "en">;

export const goldenIn: Readonly<Record<Foreign, Readonly<Record<PaperKind, readonly string[]>>>> = {
  de: {
    "packing list": [
      "Leihe L 2026-031 Packliste Winter course Kiste 1 von 2, L 2026-031/1.",
      "Fassung 2, ausgestellt am 25. November 2026, 10:00 UTC von Ada Keeper",
      "Brutto 64,3 kg, Inhalt 18,2 kg, Kiste und Verpackung 46,1 kg.",
      "Schwerpunkt 372 mm über dem Boden der Kiste.",
      "1 AN 2004.0001 Heart 1, left ventricle opened Cor Bestandteile: 2 × detachable lid.",
    ],
    "crate label": [
      "Telefon, Tag und Nacht +49 555 0111",
      "An Port Selwyn Faculty of Medicine Dissection room 2 Harbour Road 4, Port Selwyn Norwegen",
      "Bruttomasse 64,3 kg Außenmaße 1.240 × 820 × 760 mm",
      "Stapellast: höchstens 118 kg",
      "Temperaturgrenzen: 5 bis 30 °C",
    ],
    "dispatch note": [
      "Richtung Hinweg, zum Ort der Leihe Frachtführer Gentle Freight",
      "Abfahrt 1. Dezember 2026 Ankunft 3. Dezember 2026 Durch Dänemark und Schweden",
      "doppelte Kiste Hubwagen. Diese Seite oben. 1.240 × 820 × 760 mm 64,3 A 001",
      "Alle Kisten 128,6",
    ],
    "outgoing receipt": [
      "Präparate: 7. Kisten: 2.",
      "L 2026-031/2 Geprüft am 20. November 2026: befriedigend (B).",
      "Lending Centre an Gentle Freight Alle Präparate dieses Scheins.",
      "Zeit 1. Dezember 2026, 07:30 UTC",
      "Präparate nach Nr.: 1–6.",
    ],
    "incoming receipt": [
      "Von Port Selwyn Faculty of Medicine",
      "Richtung Heimweg, zum Verleiher",
      "L 2026-031/1 Keine Prüfung verzeichnet.",
      "Port Selwyn Faculty of Medicine an Gentle Freight Alle Präparate dieses Scheins.",
    ],
    quotation: [
      "Kostenangebot Nr. 3 zu dieser Leihe, aufgesetzt am 21. November 2026.",
      "Vom 5. Dezember 2026; Rückgabe bis zum 1. März 2027.",
      "Ein- und Auspacken 6,5 h zu 46,35 EUR 25 301,28",
      "Prämie für die Deckung unterwegs 0,35 ‰ von 12.000,00 EUR, für 2 Transporte 0 8,40",
      "Mit Steuer, EUR 868,43 140,01 1.008,44",
    ],
    "cost statement": [
      "Kostenaufstellung Nr. 1 zu dieser Leihe, aufgesetzt am 10. März 2027.",
      "Gegenüber Kostenangebot Nr. 3 Posten Angeboten Entstanden Unterschied",
      "Ein- und Auspacken 301,28 370,80 69,52",
      "Mit Steuer, EUR 1.008,44 776,00 −232,44",
      "Diese Aufstellung ändert nichts am Vertrag.",
    ],
    "pro-forma invoice": [
      "Nicht vollständig. Ohne Zolltarifnummer an beiden Enden: 7.",
      "Zweck der Leihe: Lehre.",
      "2 AN 2004.0002 Liver 2 Organ, vom Menschen, mit Silikon imprägniert NO 9705.21.00 1,25 2.501,00 – L 2026-031/1",
      "Nr. 1–7: Kosten des Ersatzes, angegeben am 4. Mai 2026.",
      "Norwegen 9705.21.00 2–7 Harbour Brokers 18. November 2026",
    ],
    "carnet list": [
      "Nr. 1–7: konservierte anatomische Präparate menschlicher Herkunft",
      "Heart 3, left ventricle opened Organ, vom Menschen, mit Silikon imprägniert 1 1,25 2.502,00 DE L 2026-031/1",
      "Alle Waren 7 8,75 17.521,00",
      "Geschlossene Liste Ist das Carnet ausgegeben, kommt nichts auf die Liste hinzu",
    ],
    "condition form": [
      "Vor dem Abgang Ankunft am Ort Vor dem Heimweg Wieder zu Hause Zwischendurch Nach einem Vorfall",
      "AN 2004.0001 (1 von 7): Heart 1, left ventricle opened",
      "Letzte Prüfung: Vor dem Abgang, 20. November 2026, von Cleo Conservator. Zustand: befriedigend (B).",
      "1 Haarriss left ventricle, near the apex 12 mm, gering, ruhend",
      "Keine Prüfung verzeichnet: Jeder Befund ist neu.",
    ],
    "travel sheet": [
      "Verleiher, Tag und Nacht Lending Centre, +49 555 0111",
      "Zoll: Deutschland Zoll: Dänemark Zoll: Schweden Zoll: Norwegen",
      "Angekommen: Port Selwyn Faculty of Medicine",
      "Temperaturen 5 bis 30 °C bei den Kisten.",
    ],
    "loan closure": [
      "Tage Vom 5. Dezember 2026; Rückgabe bis zum 1. März 2027. Abgeschlossen am 8. März 2027",
      "7 von 7 Präparaten, jedes mit seinen Bestandteilen gezählt und geprüft. Keine Veränderung: 7.",
      "Vor dem Abgang, 20. November 2026: befriedigend (B) Wieder zu Hause, 5. März 2027: befriedigend (B) keine Veränderung",
      "Für den Verleiher Lending Centre",
    ],
  },
  fr: {
    "packing list": [
      "Prêt L 2026-031 Liste de colisage Winter course Caisse 1 sur 2, L 2026-031/1.",
      "Version 2, établie le 25 novembre 2026, 10:00 UTC par Ada Keeper",
      "Brut 64,3 kg, contenu 18,2 kg, caisse et emballage 46,1 kg.",
      "Centre de gravité à 372 mm du fond.",
      "1 AN 2004.0001 Heart 1, left ventricle opened Cor Éléments : 2 × detachable lid.",
    ],
    "crate label": [
      "Téléphone, jour et nuit +49 555 0111",
      "À Port Selwyn Faculty of Medicine Dissection room 2 Harbour Road 4, Port Selwyn Norvège",
      "Masse brute 64,3 kg Dimensions extérieures 1 240 × 820 × 760 mm",
      "Limite de gerbage : au plus 118 kg",
      "Limites de température : de 5 à 30 °C",
    ],
    "dispatch note": [
      "Sens Aller, vers le lieu du prêt Transporteur Gentle Freight",
      "Départ 1er décembre 2026 Arrivée 3 décembre 2026 Par Danemark et Suède",
      "caisse double Transpalette. Ce côté en haut. 1 240 × 820 × 760 mm 64,3 A 001",
      "Toutes les caisses 128,6",
    ],
    "outgoing receipt": [
      "Spécimens : 7. Caisses : 2.",
      "L 2026-031/2 Constat du 20 novembre 2026 : moyen (B).",
      "Lending Centre remet à Gentle Freight Tous les spécimens de ce bon.",
      "Heure 1er décembre 2026, 07:30 UTC",
      "Spécimens par n° : 1–6.",
    ],
    "incoming receipt": [
      "De Port Selwyn Faculty of Medicine",
      "Sens Retour, vers le prêteur",
      "L 2026-031/1 Aucun constat enregistré.",
      "Port Selwyn Faculty of Medicine remet à Gentle Freight Tous les spécimens de ce bon.",
    ],
    quotation: [
      "Devis n° 3 de ce prêt, dressé le 21 novembre 2026.",
      "Du 5 décembre 2026 ; retour le 1er mars 2027 au plus tard.",
      "Emballage et déballage 6,5 h à 46,35 EUR 25 301,28",
      "Prime de la couverture en route 0,35 ‰ de 12 000,00 EUR, pour 2 transports 0 8,40",
      "Taxe comprise, EUR 868,43 140,01 1 008,44",
    ],
    "cost statement": [
      "Relevé des frais n° 1 de ce prêt, dressé le 10 mars 2027.",
      "Par rapport au devis n° 3 Poste Au devis Coût réel Écart",
      "Emballage et déballage 301,28 370,80 69,52",
      "Taxe comprise, EUR 1 008,44 776,00 −232,44",
      "Ce relevé ne change rien au contrat.",
    ],
    "pro-forma invoice": [
      "Incomplète. Sans code tarifaire aux deux bouts : 7.",
      "But du prêt : Enseignement.",
      "2 AN 2004.0002 Liver 2 Organe, d’origine humaine, imprégnation au silicone NO 9705.21.00 1,25 2 501,00 – L 2026-031/1",
      "N° 1–7 : coût du remplacement, indiqué le 4 mai 2026.",
      "Norvège 9705.21.00 2–7 Harbour Brokers 18 novembre 2026",
    ],
    "carnet list": [
      "N° 1–7 : spécimens anatomiques conservés d’origine humaine",
      "Heart 3, left ventricle opened Organe, d’origine humaine, imprégnation au silicone 1 1,25 2 502,00 DE L 2026-031/1",
      "Toutes les marchandises 7 8,75 17 521,00",
      "Liste close Une fois le carnet",
    ],
    "condition form": [
      "Avant le départ Arrivée sur le lieu Avant le retour Revenu à la maison Entre-temps Après un incident",
      "AN 2004.0001 (1 sur 7) : Heart 1, left ventricle opened",
      "Dernier constat : Avant le départ, 20 novembre 2026, par Cleo Conservator. État : moyen (B).",
      "1 microfissure left ventricle, near the apex 12 mm, légère, sans évolution",
      "Aucun constat enregistré : toute altération est nouvelle.",
    ],
    "travel sheet": [
      "Prêteur, jour et nuit Lending Centre, +49 555 0111",
      "Douane : Allemagne Douane : Danemark Douane : Suède Douane : Norvège",
      "Arrivée : Port Selwyn Faculty of Medicine",
      "Températures De 5 à 30 °C près des caisses.",
    ],
    "loan closure": [
      "Jours Du 5 décembre 2026 ; retour le 1er mars 2027 au plus tard. Clos le 8 mars 2027",
      "7 spécimens sur 7, chacun compté avec ses éléments et contrôlé. Aucun changement : 7.",
      "Avant le départ, 20 novembre 2026 : moyen (B) Revenu à la maison, 5 mars 2027 : moyen (B) aucun changement",
      "Pour le prêteur Lending Centre",
    ],
  },
};
