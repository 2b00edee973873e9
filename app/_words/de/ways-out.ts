/** What would clear what the rules of lending find, in German. */
export const germanWaysOut: Readonly<Record<string, string>> = {
  "way.use-within-consent":
    "Den Gebrauch auf das beschränken, was die spendende Person erlaubt hat, oder ein anderes Präparat wählen.",
  "way.ask-oversight":
    "Das Wort des Aufsichtsgremiums erbitten und sein Papier mit der Entscheidung verzeichnen.",
  "way.ask-donor-officer": "Die für Körperspenden beauftragte Person fragen.",
  "way.donor-officer-only":
    "Es bleibt hier. Nur die für Körperspenden beauftragte Person kann den Eintrag ändern, mit einem Nachweis; was fort ist, kommt heim.",
  "way.legacy-path":
    "Das Wort des Aufsichtsgremiums erbitten und eine Akte zur Herkunft führen: woher es kam, was bekannt ist, wer gefragt wurde.",
  "way.earlier-return": "Eine frühere Rückgabe oder ein anderes Präparat wählen.",
  "way.other-venue":
    "Einen Ort in einem Land wählen, das die spendende Person erlaubt hat, oder ein anderes Präparat.",
  "way.other-route": "Einen Weg wählen, der dieses Land nicht berührt, oder ein anderes Präparat.",
  "way.other-route-or-ask":
    "Einen Weg wählen, der dieses Land nicht berührt, oder die für Körperspenden beauftragte Person fragen.",
  "way.no-admission-charge":
    "Es ohne Eintrittsgeld zeigen oder ein anderes Präparat wählen; bei der örtlichen Behörde erfragen.",
  "way.no-promotion": "Es aus der Werbung lassen.",
  "way.without-these-pictures": "Diese Bilder aus der Anfrage streichen.",
  "way.without-this-activity": "Diese Tätigkeit aus der Anfrage streichen.",
  "way.activity-permission":
    "Die schriftliche Genehmigung des Zentrums für alle Tage der Leihe verzeichnen lassen oder diese Tätigkeit aus der Anfrage streichen.",
  "way.two-persons":
    "Zwei Personen entscheiden lassen, darunter die für Körperspenden beauftragte Person und mit dem Wort des Aufsichtsgremiums.",
  "way.provenance-file": "Herausfinden, wann es hergestellt wurde oder herkam, und es verzeichnen.",
  "way.didactic-only": "Es lehrend zeigen; bei der örtlichen Behörde erfragen.",
  "way.record-title": "Verzeichnen, wem es gehört.",
  "way.owners-leave": "Die Eigentümerseite schriftlich um Zustimmung bitten und sie verzeichnen.",
  "way.settle-title": "Klären, wem es gehört; bis dahin steht die Sammlungsverwaltung dafür ein.",
  "way.review-on-the-way": "Eine Prüfung nach der halben Zeit vereinbaren oder eine frühere Rückgabe wählen.",
  "way.talk-to-borrower": "Mit dem Entleiher über das Geschehene sprechen und Bedingungen vereinbaren.",
  "way.whole-run": "Die ganze Folge verleihen oder vereinbaren, welche Scheiben zurückbleiben.",
  "way.state-light": "Die Orte früherer Leihen ihr Licht angeben lassen.",
  "way.rest-in-dark": "Es im Dunkeln ruhen lassen oder ein anderes Präparat wählen.",
  "way.spread-load":
    "Die Last auf eine größere Grundfläche verteilen, einen Raum wählen, dessen Boden mehr trägt, oder anderswo auspacken.",
  "way.substitute": "Ein anderes Präparat wählen, das dasselbe zeigt.",
  "way.later-or-substitute": "Einen späteren Tag wählen oder ein anderes Präparat, das dasselbe zeigt.",
  "way.later-start": "Einen späteren Tag der Lieferung wählen oder eine kürzere Vorbereitung vereinbaren.",
  "way.call-home": "Die andere Leihe zurückrufen.",
  "way.watch-return": "Auf die Rückgabe der anderen Leihe achten.",
  "way.check-again": "Es prüfen lassen.",
  "way.treat-or-substitute": "Es behandeln lassen oder ein anderes Präparat wählen.",
  "way.ask-conservator": "Die Restaurierung bitten, es anzusehen und zuzustimmen.",
  "way.examine": "Die Befunde untersuchen lassen.",
  "way.viewing-only": "Nur durch Ansehen lehren oder ein anderes Präparat wählen.",
  "way.risk-assessment": "Handschuhe, Lüftung und eine Beurteilung der Gefährdung vereinbaren.",
  "way.spill-tray": "Den Ort um eine Wanne, Lüftung und Bindemittel für ausgelaufene Flüssigkeit bitten.",
  "way.supervise": "Den Ort fragen, wer im Raum ist, wann immer Präparate gebraucht werden.",
  "way.content-notice": "Um einen Hinweis am Eingang und um eine Sicht bitten, die man selbst wählt.",
  "way.verify-borrower": "Die Einrichtung und wer für sie unterzeichnet einmal prüfen.",
  "way.clear-standing": "Zuerst klären, was mit diesem Entleiher offen ist.",
  "way.own-venue": "Einen Ort des Entleihers wählen oder die andere Einrichtung selbst anfragen lassen.",
  "way.state-venue": "Den Ort nach der Angabe fragen.",
  "way.less-light": "Dimmen, filtern oder es weniger Stunden oder Tage zeigen.",
  "way.case-or-other-room":
    "Es in einer klimatisierten Vitrine oder einem anderen Raum zeigen oder eine andere Jahreszeit wählen.",
  "way.measure-passage": "Den Durchgang messen lassen, die lichte Öffnung bei offenem Flügel.",
  "way.measure-slope":
    "Die Steigung der Rampe mit dem Frachtführer messen und beim Weg hinein angeben lassen.",
  "way.more-hands": "Mit dem Frachtführer mehr Hände oder eine Winde vereinbaren.",
  "way.measure-specimen": "Es messen und wiegen.",
  "way.other-way-in": "Einen anderen Weg hinein suchen oder ein anderes Präparat wählen.",
  "way.site-visit": "Es an Ort und Stelle ansehen, bevor die Kiste gebaut wird.",
  "way.design-crate": "Die Kiste von Hand entwerfen und prüfen lassen.",
  "way.wider-base": "Sie auf eine breitere Grundfläche stellen.",
  "way.state-cost": "Die Ersatzkosten angeben lassen.",
  "way.state-cover": "Sagen, welche Deckung es geben wird.",
  "way.raise-cover": "Die Deckung erhöhen.",
  "way.one-currency": "Die Deckung in der Währung der Ersatzkosten angeben.",
};
