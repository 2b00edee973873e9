/**
 * What the rules that touch law find, and the ways out, in German. Every sentence
 * ends by sending the reader to the local authority; none says by the program's
 * own word that something is lawful or not.
 */

export const germanEndOfLaw = "Bei der örtlichen Behörde erfragen.";

/** Sentences with the one end that all of them have. */
const endingAlike = (sentences: Readonly<Record<string, string>>): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(sentences).map(([code, sentence]) => [code, `${sentence} ${germanEndOfLaw}`]),
  );

/** One kind of paper and the ways in which it may serve or not. */
const ofPaper = (code: string, name: string) => ({
  [`law.${code}`]: `Verzeichnet – ${name}: {number}, {authority}, bis {validUntil}.`,
  [`law.${code}-vague`]: `${name} {number}: Das Land oder das Ende ist nicht angegeben.`,
  [`law.${code}-days`]: `${name} {number}: Die Tage der Leihe sind nicht gedeckt; das Ende ist am {validUntil}.`,
  [`law.${code}-country`]: `${name} {number}: gilt nicht für dieses Land: {country}.`,
});

export const germanLawFindings = endingAlike({
  "permits.no-border": "Es wird keine Grenze überquert.",
  "permits.not-public":
    "Nichts wird öffentlich gezeigt, daher wird hier nach keiner Erlaubnis zum Zeigen gefragt.",

  "law.licence": "Erlaubnis für {venue} ({licence}): {number}, {authority}, bis {validUntil}.",
  "law.licence-missing": "Keine Erlaubnis für {venue} ({licence}) ist verzeichnet.",
  "law.licence-vague": "Die Erlaubnis {number} für {venue} ({licence}) sagt nicht, bis wann sie gilt.",
  "law.licence-days":
    "Die Erlaubnis {number} für {venue} ({licence}) deckt nicht die Tage der Leihe; sie endet am {validUntil}.",
  ...ofPaper("import-paper", "Papier für die Einfuhr"),
  ...ofPaper("export-licence", "Ausfuhrgenehmigung"),
  ...ofPaper("species-paper", "Papier des Artenschutzes"),
  ...ofPaper("veterinary-paper", "Veterinärbescheinigung"),
  "law.cells-not-known": "Es ist nicht verzeichnet, ob es Gewebe mit Zellen enthält.",
  "law.death-papers": "Papiere über Ursache und Beurkundung des Todes liegen vor.",
  "law.no-death-papers": "Papiere über Ursache und Beurkundung des Todes liegen nicht vor.",

  "law.uk-before-the-century":
    "Der Tod liegt vor dem 1. September 1906, vor den Jahren, die das Gesetz über menschliches Gewebe zählt.",
  "law.uk-hundred-years":
    "Der Tod liegt hundert Jahre zurück, aber nach dem 1. September 1906; wie die hundert Jahre gezählt werden, sagt die Aufsichtsbehörde.",
  "law.uk-recent":
    "Der Tod liegt nicht lange zurück, daher wird die Regel des Gesetzes über Erlaubnisse zum Zeigen betrachtet.",
  "law.uk-death-not-known":
    "Es ist nicht bekannt, wann der Tod eintrat; es wird angenommen, dass er nicht lange zurückliegt.",
  "law.uk-licence-off":
    "Für einen Tod vor dem 1. September 1906 wird hier nach keiner Erlaubnis zum Zeigen gefragt.",
  "law.uk-own-consent":
    "Das eigene Wort jeder spendenden Person liegt schriftlich mit Zeugnis oder in einem Testament vor.",
  "law.uk-no-own-consent":
    "Das eigene Wort der Person, schriftlich mit Zeugnis oder in einem Testament, ist nicht von jeder spendenden Person verzeichnet; Angehörige können es für diesen Gebrauch nicht geben.",
  "law.uk-witness-not-known":
    "Es ist nicht verzeichnet, wann das Wort einer spendenden Person unterschrieben oder ob es bezeugt wurde.",
  "law.uk-existing":
    "Verwahrt seit {since}, vor dem Gesetz über menschliches Gewebe; nach der Einwilligung wird nicht erneut gefragt.",
  "law.uk-not-existing":
    "Verwahrt seit {since}, nach dem Inkrafttreten des Gesetzes über menschliches Gewebe.",
  "law.uk-held-not-known":
    "Es ist nicht bekannt, seit wann es verwahrt wird; es gilt als nach September 2006 aufgenommen.",
  "law.uk-origin-not-proved": "Es ist eingeführt, und kein Papier belegt eine Herkunft mit Einwilligung.",
  "law.uk-not-anatomical": "Es diente nicht der anatomischen Untersuchung.",
  "law.uk-examination-not-known": "Es ist nicht verzeichnet, ob es der anatomischen Untersuchung diente.",
  "law.uk-no-cells": "Nach den Angaben zum Präparat enthält es kein Gewebe mit Zellen.",

  "law.scotland-or-not":
    "Es ist nicht bekannt, ob {venue} in Schottland liegt, wo ein eigenes Gesetz vom öffentlichen Zeigen spricht.",
  "law.scotland-not-examined": "Nach den Angaben zum Präparat diente es nicht der anatomischen Untersuchung.",

  "law.ireland-no-authorisation":
    "Keine vorherige Genehmigung ist verzeichnet, es zur anatomischen Untersuchung einzuführen; sie nennt Präparat, Zweck, Zeit und Ort.",
  "law.ireland-register": "Herkunft, Einwilligung und Papiere des Todes sind für das Register verzeichnet.",
  "law.ireland-register-lacks":
    "Das Register des Inhabers der Erlaubnis verlangt, was nicht verzeichnet ist: {lacking}.",

  "law.germany-artistic":
    "Ein Gericht hat den künstlerischen Gebrauch eines Leichnams als Verstoß gegen das Bestattungsrecht angesehen.",
  "law.germany-promotional":
    "Das Zeigen wirbt für etwas; Gerichte haben solches Zeigen am Bestattungsrecht gemessen.",
  "law.germany-didactic": "Die Art des Zeigens ist lehrend.",
  "law.germany-no-demonstration": "Es ist nicht geplant, vor Publikum zu präparieren.",
  "law.germany-declared":
    "Es ist geplant, vor Publikum zu präparieren; jede spendende Person hat sich zur Entnahme und zum Zeigen erklärt.",
  "law.germany-not-declared":
    "Es ist geplant, vor Publikum zu präparieren, und die Erklärungen der spendenden Personen reichen nicht so weit.",
  "law.germany-injustice":
    "Es kam durch Unrecht oder ohne das freie Wort eines Menschen, oder könnte so gekommen sein.",
  "law.germany-no-injustice": "In dem, was verzeichnet ist, zeigt sich kein Unrechtskontext.",
  "law.germany-context-not-known": "Es ist nicht bekannt, unter welchen Umständen es kam.",

  "law.france-commercial": "Ein Gericht hat eine kommerzielle Ausstellung menschlicher Körper untersagt.",
  "law.france-not-commercial": "Es wird kein Eintritt verlangt und für nichts geworben.",
  "law.france-proof":
    "Gerichte haben den Nachweis der Herkunft und der zu Lebzeiten gegebenen Einwilligung verlangt.",

  "law.us-named-purpose":
    "Der Zweck ({purpose}) gehört zu denen, die Gesetze über anatomische Spenden nennen.",
  "law.us-display-named": "Die Spende jeder spendenden Person nennt das Zeigen.",
  "law.us-display-not-named":
    "Die Spende nennt dieses Zeigen nicht, und die Bundesstaaten lesen das verschieden.",
  "law.us-no-money": "Es wird kein Eintritt verlangt und für nichts geworben.",
  "law.us-over-hundred": "Der Tod liegt mehr als hundert Jahre zurück.",
  "law.us-presumed-house":
    "Das Haus ist von einer Art, bei der das Gesetz annehmen kann, dass es seine Papiere hat; ob es anerkannt ist, ist hier nicht bekannt.",
  "law.us-authority-to-judge":
    "Von jeder spendenden Person ist eine schriftliche Ermächtigung verzeichnet; die Leitung der Gesundheitsbehörde urteilt darüber.",
  "law.us-no-authority":
    "Ein Zeigen gegen Geld verlangt eine gültige schriftliche Ermächtigung, die nicht verzeichnet ist.",
  "law.us-over-eighty": "Der Tod liegt mehr als achtzig Jahre zurück, was eine Vorlage von 2009 ausnimmt.",
  "law.us-commercial-hawaii":
    "Eine Vorlage von 2009 spricht gegen das kommerzielle Zeigen Verstorbener; ob sie Gesetz wurde, ist zu klären.",
  "law.us-california-signs":
    "Ein Entwurf von 2008 wollte Schilder am Eingang und ein Verzeichnis der Einwilligungen; soweit bekannt, ist er kein Gesetz.",
  "law.us-state-not-known":
    "Es ist nicht bekannt, in welchem Bundesstaat {venue} liegt, und die Bundesstaaten haben eigene Worte.",
  "law.us-not-remains":
    "Sauberer trockener Knochen oder nichts mit Zellen: Die Regel über die Einfuhr von Überresten nimmt es aus.",
  "law.us-not-infectious":
    "Papiere darüber, dass das Material nichts Ansteckendes trägt, sind für die Grenze nicht verzeichnet.",
  "law.us-no-tissue": "Es enthält kein Gewebe, daher stellt sich der Zweifel an der Zolltarifnummer nicht.",
  "law.us-tariff-decided": "Ein Zollagent hat über die Zolltarifnummer entschieden.",
  "law.us-tariff-open":
    "Für Gewebe sind zwei Zolltarifpositionen umstritten, und kein Zollagent hat entschieden.",

  "law.union-export-over":
    "Es verlässt die Union; Kulturgut über einem Alter oder Kosten braucht eine Ausfuhrgenehmigung, und die Kosten sind hoch oder nicht bekannt.",
  "law.union-export-below":
    "Es verlässt die Union; seine Kosten liegen unter der Schwelle der Union, und nationales Recht kann dennoch eine Genehmigung verlangen.",
  "law.union-origin-not-known": "Es ist nicht verzeichnet, aus welchem Land es stammt.",
  "law.union-made-there": "Es stammt aus der Union ({country}).",
  "law.union-import-below":
    "Herkunft: {country}. Es liegt unter dem Alter oder den Kosten, ab denen eine Erklärung des Einführers verlangt wird.",
  "law.union-statement":
    "Herkunft: {country}. Es ist älter als 200 Jahre und kostet 18\u00A0000\u00A0EUR oder mehr.",
  "law.union-age-or-cost-not-known": "Herkunft: {country}. Sein Alter oder seine Kosten sind nicht bekannt.",
  "law.union-complete-preparation":
    "Ein fertiges anatomisches Präparat ({preparation}); eine Erklärung darüber geht mit.",
  "law.veterinary-missing":
    "Es ist nicht fertig präpariert, und keine Veterinärbescheinigung ist verzeichnet.",

  "law.species-not-listed": "{species}: nach den Angaben zum Präparat in keinem Anhang.",
  "law.species-not-known":
    "{species}: Es ist nicht verzeichnet, ob die Art in diesem Land geschützt ist: {country}.",
  "law.species-listed": "{species}: geschützt (Anhang {appendix}), und keine Nummer ist verzeichnet.",
  "law.genes-not-used": "Es wird keine Probe genommen, daher wird keine genetische Ressource genutzt.",
  "law.genes-sampled": "Eine Probenahme kann eine genetische Ressource nutzen.",
  "law.fluid-not-classed": "Seine Flüssigkeit ({fluid}) ist nicht als Gefahrgut bekannt.",
  "law.fluid-weak-formaldehyde":
    "Formaldehydlösung mit {percent}\u00A0%, in einer Stärke, die Luftfrachtführer nicht einstufen; einzelne können abweichen.",
  "law.fluid-small-quantity":
    "{freeFluidMl}\u00A0ml freie Flüssigkeit ({fluid}): Bis zu {limitMl}\u00A0ml gehen als kleine Menge, dreifach versiegelt mit Saugstoff.",
  "law.fluid-declared":
    "{freeFluidMl}\u00A0ml freie Flüssigkeit ({fluid}) sind mehr als eine kleine Menge ({limitMl}\u00A0ml).",
  "law.fluid-volume-not-known": "Wie viel freie Flüssigkeit ({fluid}) es enthält, ist nicht bekannt.",
  "law.fluid-not-known":
    "Welche Flüssigkeit es enthält und in welcher Stärke, ist nicht genau genug bekannt.",
  "law.carnet-fits": "{days} [days:Tag|Tage] fort, innerhalb eines Carnets.",
  "law.carnet-short-states":
    "{days} [days:Tag|Tage] fort; einige Staaten geben einem Carnet nur {shortLimit}.",
  "law.carnet-too-long": "{days} [days:Tag|Tage] fort, länger als die {limit} eines Carnets.",
  "law.admission-fits":
    "{days} [days:Tag|Tage] in der Union, ab dem {since}; die vorübergehende Verwendung dauert {limit}.",
  "law.admission-too-long":
    "{days} [days:Tag|Tage] in der Union, ab dem {since}, länger als die {limit} der vorübergehenden Verwendung.",
  "law.admission-not-known": "Es ist nicht bekannt, seit wann es in der Union ist.",

  "law.border-papers":
    "Papiere für die Grenze ({country}): {outward} für die Ausfuhr und {inward} für die Einfuhr.",
  "law.border-not-known":
    "Es ist nicht verzeichnet, welche Papiere menschliches Material braucht, um in dieses Land zu kommen und zurück: {country}.",
});

export const germanLawWaysOut = endingAlike({
  "way.record-licence":
    "Den Ort um seine Erlaubnis für alle Tage der Leihe bitten und sie beim Ort verzeichnen.",
  "way.ask-regulator": "Die Aufsichtsbehörde fragen und die Antwort beim Präparat verwahren.",
  "way.context-file": "Herausfinden, wie und wann es kam, und eine Akte zur Herkunft führen.",
  "way.strike-activity": "Diese Tätigkeit aus der Anfrage streichen.",
  "way.show-didactically": "Es lehrend zeigen.",
  "way.signs-at-entrance": "Schilder am Eingang anbringen und ein Verzeichnis der Einwilligungen führen.",
  "way.no-charge": "Es ohne Eintrittsgeld zeigen oder ein anderes Präparat wählen.",
  "way.record-origin": "Herausfinden und beim Präparat unter Herkunft und Recht verzeichnen.",
  "way.name-subdivision": "Beim Ort den Landesteil nennen.",
  "way.prior-authorisation":
    "Die Genehmigung beantragen, bevor etwas zugesagt wird, und sie als Einfuhrgenehmigung verzeichnen.",
  "way.ask-order-office":
    "Die Ordnungsbehörde der Gemeinde vor dem Vertrag unterrichten und ihre Antwort verzeichnen.",
  "way.ask-counsel": "Rechtsrat am Ort einholen, bevor etwas zugesagt wird.",
  "way.ask-broker": "Einen Zollagenten fragen und die Entscheidung verzeichnen.",
  "way.ask-export-authority": "Fragen, ob eine Ausfuhrgenehmigung nötig ist, und sie verzeichnen.",
  "way.veterinary-certificate": "Eine Veterinärbescheinigung ausstellen lassen und sie verzeichnen.",
  "way.ask-genes-authority": "Fragen, was die Forschung an Genen verlangt, bevor eine Probe genommen wird.",
  "way.dangerous-goods":
    "Die Flüssigkeit vom Frachtführer anmelden lassen oder das Präparat abgelassen und versiegelt senden.",
  "way.shorter-or-other-customs":
    "Die Leihe kürzen oder einen Zollagenten nach einem anderen Zollverfahren fragen.",
  "way.species-paper": "Die Genehmigung verzeichnen oder die Auskunft der Behörde, dass keine nötig ist.",
  "way.ask-authority-border": "Auf beiden Seiten der Grenze fragen und die Papiere verzeichnen.",
  "way.evidence-bundle": "Den Nachweis von Herkunft und Einwilligung vorbereiten.",
});
