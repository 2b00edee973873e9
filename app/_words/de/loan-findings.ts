/** What the rules of lending find, in German. Nothing here says that something is lawful. */

/** Quantities of the room, with the unit in which they are told. */
const quantities = [
  ["temperature", "Temperatur", "\u00A0°C"],
  ["temperature-change", "Änderung der Temperatur in 24\u00A0h", "\u00A0K"],
  ["humidity", "Relative Feuchte", "\u00A0%"],
  ["humidity-change", "Änderung der relativen Feuchte in 24\u00A0h", "\u00A0%"],
  ["illuminance", "Beleuchtungsstärke", "\u00A0lx"],
  ["light-of-year", "Licht des Jahres, früher aufgenommenes eingeschlossen", "\u00A0lx·h"],
  ["ultraviolet", "Ultraviolett", "\u00A0µW/lm"],
] as const;

function ofQuantity(code: string, name: string, unit: string): [string, string][] {
  const isBand = code === "temperature" || code === "humidity";
  const stated = isBand ? `{statedLow} bis {statedHigh}${unit}` : `{statedHigh}${unit}`;
  const clear = isBand ? `{clearLow} bis {clearHigh}${unit}` : `bis zu {clearHigh}${unit}`;
  const bar = isBand ? `{barLow} bis {barHigh}${unit}` : `bis zu {barHigh}${unit}`;
  const limit = isBand ? bar : `{barHigh}${unit}`;
  return [
    [`climate.${code}-within`, `${name}: ${stated}, im Rahmen (${clear}).`],
    [`climate.${code}-outside-warn`, `${name}: ${stated}; das Präparat braucht ${clear}.`],
    [`climate.${code}-outside-alarm`, `${name}: ${stated}; das Präparat verträgt ${bar}.`],
    [`climate.${code}-over-target`, `${name}: ${stated}; gewünscht sind ${clear}.`],
    [`climate.${code}-over-limit`, `${name}: ${stated}; die Grenze ist ${limit}.`],
    [`climate.${code}-not-stated`, `${name}: vom Ort nicht angegeben.`],
    [`climate.${code}-no-common-band`, `${name}: Die Präparate haben keinen gemeinsamen Bereich.`],
  ];
}

export const germanLoanFindings: Readonly<Record<string, string>> = {
  "reason.withheld":
    "Der Grund ist dem Verleiher und der für Leihen zuständigen Stelle Ihres Hauses bekannt.",
  "reason.cost-withheld":
    "Es geht um Ersatzkosten und Deckung; die Zahlen verwahrt die für Leihen zuständige Stelle.",
  "reason.person-withheld":
    "Es geht um die spendende Person; den Grund kennt die für Körperspenden beauftragte Person.",

  "consent.animal": "Ein Präparat vom Tier ({species}): Eine Einwilligung wird nicht gefragt.",
  "consent.granted": "Die Einwilligung erlaubt: {scope}.",
  "consent.refused": "Die Einwilligung schließt aus: {scope}.",
  "consent.not-asked": "Die spendende Person wurde dazu nie gefragt: {scope}.",
  "consent.not-known": "Der Wunsch der spendenden Person dazu ist nicht bekannt: {scope}.",
  "consent.audience-within":
    "Das Publikum ({audience}) liegt in der Grenze, die die spendende Person gesetzt hat ({limit}).",
  "consent.audience-outside":
    "Die Grenze der spendenden Person: {limit}; angefragt ist ein anderes Publikum: {audience}.",
  "consent.audience-not-known": "Es ist nicht bekannt, wem die spendende Person gezeigt werden wollte.",
  "consent.no-record": "Für dieses Präparat ist keine Einwilligung verzeichnet.",
  "consent.no-record-of-one":
    "Von {donors} seiner spendenden Personen [donors:liegt|liegen] keine Einwilligung vor.",
  "consent.not-withdrawn": "Die Einwilligung wurde nicht widerrufen.",
  "consent.withdrawn": "Die Einwilligung wurde widerrufen, mit Wirkung vom {effectiveOn}.",
  "consent.withdrawal-later":
    "Die Einwilligung wurde widerrufen, mit Wirkung vom {effectiveOn}, nach der Leihe.",
  "consent.outlasts-loan": "Die Einwilligung gilt über den {neededUntil} hinaus.",
  "consent.ends": "Die Einwilligung endet am {validUntil}; sie muss bis zum {neededUntil} gelten.",
  "consent.review-due": "Die Einwilligung ist bis zum {reviewDueOn} erneut zu prüfen.",
  "consent.territory-within": "Das Land ({country}) gehört zu dem, was die spendende Person erlaubt hat.",
  "consent.territory-outside":
    "Das Land ({country}) liegt außerhalb dessen, was die spendende Person erlaubt hat.",
  "consent.transit-within":
    "Der Weg führt durch dieses Land: {country}; das hat die spendende Person erlaubt.",
  "consent.transit-refused":
    "Der Weg führt durch dieses Land: {country}; die spendende Person hat es ausgeschlossen.",
  "consent.transit-not-listed":
    "Der Weg führt durch dieses Land: {country}; es gehört nicht zu den Ländern, die die spendende Person erlaubt hat.",
  "consent.not-commercial": "Es wird kein Eintritt verlangt und für nichts geworben.",
  "consent.paid-display-not-granted":
    "Es wird Eintritt verlangt, und das Zeigen gegen Eintrittsgeld ist nicht erlaubt worden.",
  "consent.non-commercial-only":
    "Es wird Eintritt verlangt, und die Einwilligung gilt nur für nicht kommerziellen Gebrauch.",
  "consent.likeness-not-granted":
    "Das Zeigen dient der Werbung, und der Gebrauch des Bildes der Person dafür ist nicht erlaubt worden.",
  "consent.no-pictures": "Bilder sind nicht geplant.",
  "consent.pictures-granted": "Bilder sind dafür erlaubt: {picture}.",
  "consent.pictures-refused":
    "Bilder sind dafür ausgeschlossen, die spendende Person hat sie abgelehnt: {picture}. Die Leihe selbst kann weitergehen.",
  "consent.pictures-not-known":
    "Bilder sind dafür ausgeschlossen, sie sind nicht erlaubt worden: {picture}. Die Leihe selbst kann weitergehen.",
  "consent.activity-refused":
    "Als Gebrauch ausgeschlossen, die spendende Person hat es abgelehnt: {activity}. Die Leihe selbst kann weitergehen.",
  "consent.activity-not-known":
    "Als Gebrauch ausgeschlossen, es ist nicht erlaubt worden: {activity}. Die Leihe selbst kann weitergehen.",
  "consent.not-recognisable": "Niemand ist zu erkennen.",
  "consent.identifiable": "Ein Gesicht, ein Merkmal oder ein Name macht die Person erkennbar.",
  "consent.minor": "Die spendende Person war jung.",
  "consent.foetal": "Fetales Material, von den Eltern gegeben.",
  "consent.age-not-known": "Es ist nicht bekannt, wie alt die spendende Person war.",
  "consent.recognisable-not-known": "Es ist nicht bekannt, ob jemand zu erkennen wäre.",
  "consent.basis": "Grundlage der Spende: {basis}.",
  "consent.basis-without-own-word": "Der Körper kam ohne das eigene Wort der Person: {basis}.",
  "consent.disposition-later": "Letzter Verbleib: {disposition}.",
  "consent.disposition-due":
    "Geschuldet bis zum {dueOn}: {disposition}; die Leihe reicht mit den Tagen danach bis zum {neededUntil}.",
  "consent.disposition-not-known":
    "Es ist nicht bekannt, ob und wann das Präparat geschuldet wird ({disposition}).",
  "consent.claim-pending":
    "Jemand erhebt Anspruch darauf oder bittet um die Rückkehr, und nichts ist entschieden.",
  "consent.composite":
    "Es stammt von {donors} spendenden Personen; die strengste ihrer Grenzen gilt für das Ganze.",
  "consent.age-of-specimen": "Sein Alter ist bis hierher bekannt: {since}.",
  "consent.age-of-specimen-not-known":
    "Niemand weiß, wie alt das Präparat ist; es wird wie ein neues behandelt.",
  "consent.style-didactic": "Die Art des Zeigens ist lehrend.",
  "consent.style": "Die Art des Zeigens ist {style}.",

  "title.owned": "Das Präparat gehört dem Zentrum selbst.",
  "title.no-record": "Es ist nicht verzeichnet, wem das Präparat gehört.",
  "title.no-leave":
    "Es gehört nicht dem Zentrum ({status}), und eine schriftliche Zustimmung der Eigentümerseite liegt nicht vor.",
  "title.leave": "Die Eigentümerseite ({owner}) hat zugestimmt: {reference}.",
  "title.leave-but-unsettled": "Stand des Eigentums: {status}; eine Zustimmung liegt vor: {reference}.",

  "permits.activity-permitted":
    "Schriftliche Genehmigung des Zentrums ({activity}): {number}, bis {validUntil}.",
  "permits.activity-not-permitted":
    "Eine schriftliche Genehmigung des Zentrums ist dafür nicht verzeichnet: {activity}. Die Leihe selbst kann weitergehen.",
  "permits.activity-permission-days":
    "Die schriftliche Genehmigung {number} ({activity}) deckt nicht alle Tage der Leihe.",
  "permits.activity-permission-country":
    "Die schriftliche Genehmigung {number} ({activity}) gilt nicht für dieses Land: {country}.",

  "free.days": "Frei vom {from} bis zum {to}.",
  "free.taken": "Vom {from} bis zum {to} ist es an einigen Tagen anderweitig vergeben.",
  "free.taken-until":
    "An einigen dieser Tage ist es anderweitig vergeben. Ab dem {freeFrom} sind alle Tage frei, um die gebeten wird.",
  "free.lead-time": "{days} [days:Tag|Tage] bis zur Lieferung; üblich sind {usual}.",
  "free.lead-time-short":
    "Nur {days} [days:Tag|Tage] bis zur Lieferung; für Prüfung, Verpackung und Weg sind {usual} üblich.",
  "free.at-home": "Es ist nicht anderweitig ausgeliehen.",
  "free.notice": "{days} [days:Tag|Tage] im Voraus angefragt; üblich sind {usual}.",
  "free.notice-short":
    "Nur {days} [days:Tag|Tage] im Voraus angefragt; für eine solche Leihe sind {usual} üblich.",
  "free.length": "Die Leihe dauert {days} [days:Tag|Tage]; bis zu {usual} sind üblich.",
  "free.long": "Die Leihe dauert {days} [days:Tag|Tage]; solche Leihen dauern bis zu {usual}.",
  "free.too-long": "Die Leihe dauert {days} [days:Tag|Tage]; keine dauert länger als {usual}.",
  "free.not-lent-of-late": "Es war innerhalb eines Jahres nicht ausgeliehen.",
  "free.rested": "In Ruhe seit dem {endedOn}, {days} [days:Tag|Tage]; nötig sind {needed}.",
  "free.not-rested": "In Ruhe seit dem {endedOn}, nur {days} [days:Tag|Tage]; nötig sind {needed}.",
  "free.missing": "Es wird seit der Leihe {loan} vermisst.",
  "free.overdue": "Es ist noch in der Leihe {loan}, Rückgabe fällig am {dueOn}.",
  "free.away": "Es ist bis zum {dueOn} in der Leihe {loan}.",

  "condition.never-checked": "Es wurde noch nie geprüft.",
  "condition.grade": "Zustand: Stufe {grade} am {checkedOn}.",
  "condition.grade-poor": "Zustand: Stufe {grade} am {checkedOn}, schlecht.",
  "condition.grade-signed-off":
    "Zustand: Stufe {grade} am {checkedOn}, schlecht. Die Restaurierung hat am {signedOffOn} zugestimmt.",
  "condition.grade-not-acceptable": "Zustand: Stufe {grade} am {checkedOn}, nicht vertretbar.",
  "condition.recent": "Geprüft am {checkedOn}; das genügt bis zum {servesUntil}.",
  "condition.too-old": "Die letzte Prüfung, vom {checkedOn}, ist älter als 12 Monate.",
  "condition.fit": "Nach der Prüfung vom {checkedOn} geeignet für das, worum gebeten wird.",
  "condition.unfit": "Nach der Prüfung vom {checkedOn} nicht geeignet: {unfitTo}.",
  "condition.no-unknown-activity": "Jeder Befund ist als ruhend oder fortschreitend beurteilt.",
  "condition.unknown-activity":
    "Von {unknown} [unknown:Befund|Befunden] hat niemand gesagt, ob [unknown:er|sie] [unknown:fortschreitet|fortschreiten].",

  "use.viewing": "Es wird angesehen und nicht gehandhabt.",
  "use.handling": "Es darf gehandhabt werden.",
  "use.viewing-only": "Es darf nur angesehen werden; gebeten wird um Handhaben.",
  "use.no-hazard": "Kein Gefahrstoff spricht gegen diesen Gebrauch.",
  "use.hazard-in-hand": "Gefahrstoffe kommen mit Händen in Berührung: {substances}.",
  "use.no-spill-provision": "Der Ort hat nichts für ausgelaufene Flüssigkeit ({fluid}).",
  "use.spill-not-known": "Der Ort hat nicht angegeben, was er für ausgelaufene Flüssigkeit hat ({fluid}).",
  "use.supervised": "{venue}: ein beaufsichtigter Raum.",
  "use.not-supervised": "{venue}: nicht beaufsichtigt.",
  "use.supervision-not-known": "{venue}: nicht angegeben, ob der Raum beaufsichtigt ist.",
  "use.open-view": "{venue}: Präparate vom Menschen sind zu sehen, ohne dass man es gewählt hat.",
  "use.view-not-known": "{venue}: nicht angegeben, ob man wählen kann, Präparate vom Menschen zu sehen.",
  "use.borrower-known": "Der Entleiher ist bekannt, und nichts steht gegen ihn.",
  "use.borrower-not-verified": "Den Entleiher hat noch niemand geprüft.",
  "use.borrower-on-hold": "Der Entleiher ist gesperrt: keine neue Leihe.",
  "use.no-earlier-loan": "Der Entleiher hatte in drei Jahren keine Leihe.",
  "use.good-record": "{loans} [loans:Leihe|Leihen] in drei Jahren, rechtzeitig und ohne Schaden zurück.",
  "use.record-with-marks":
    "Von {loans} [loans:Leihe|Leihen] in drei Jahren kamen {late} spät zurück; {damaged} [damaged:Präparat kam|Präparate kamen] beschädigt heim.",
  "use.whole-run":
    "Eine lückenlose Folge von Scheiben, {first} bis {last}; {absent} dieser Nummern besitzt die Serie nicht.",
  "use.gaps-in-run": "{left} [left:Scheibe|Scheiben] zwischen {first} und {last} blieben zurück.",
  "use.run-not-known": "Es ist nicht bekannt, welche Scheiben die Serie besitzt.",
  "use.next-venue":
    "Es ginge unmittelbar von der Leihe {loan} weiter, fällig am {dueOn}; kein Vertrag nennt einen nächsten Ort.",
  "use.own-venue": "{venue}: ein Ort des Entleihers.",
  "use.lending-on": "{venue}: der Ort einer anderen Einrichtung; das wäre ein Weiterverleihen.",

  ...Object.fromEntries(quantities.flatMap(([code, name, unit]) => ofQuantity(code, name, unit))),
  "climate.no-report": "{venue}: kein Bericht über das Gebäude mit einem Datum.",
  "climate.old-report":
    "{venue}: Der Bericht über das Gebäude ist vom {reportedOn}, mehr als zwei Jahre alt.",

  "light.left":
    "Licht, das vom Jahr bleibt: {left} von {yearly}\u00A0lx·h; {spent}\u00A0lx·h nahmen Leihen auf.",
  "light.little-left":
    "Vom Licht des Jahres bleibt wenig: {left} von {yearly}\u00A0lx·h; {spent}\u00A0lx·h nahmen Leihen auf.",
  "light.none-left":
    "Vom Licht des Jahres bleibt nichts: {spent}\u00A0lx·h nahmen Leihen auf, erlaubt sind {yearly}.",
  "light.spent-not-known": "Wie viel Licht es in einem Jahr auf Leihen aufnahm, ist nicht bekannt.",

  "way-in.floor-light": "Seine Kiste, {grossMassKg}\u00A0kg, ist so leicht wie das, was Personen tragen.",
  "way-in.floor-not-known": "Was der Boden trägt, ist nicht bekannt; die Kiste drückt mit {load}\u00A0kg/m².",
  "way-in.floor-bears": "Der Boden trägt {floor}\u00A0kg/m²; die Kiste drückt mit {load}\u00A0kg/m².",
  "way-in.floor-near":
    "Die Kiste drückt mit {load}\u00A0kg/m², nahe den {floor}\u00A0kg/m², die der Boden trägt.",
  "way-in.floor-too-weak": "Die Kiste drückt mit {load}\u00A0kg/m²; der Boden trägt {floor}\u00A0kg/m².",
  "way-in.passes":
    "Seine Kiste ({lengthMm} × {widthMm} × {heightMm}\u00A0mm, {grossMassKg}\u00A0kg) passt auf dem ganzen Weg, mit {spareMm}\u00A0mm Spielraum.",
  "way-in.too-narrow":
    "{passage}: zu eng für die Kiste ({check}); {needed}\u00A0{unit} sind nötig, {available}\u00A0{unit} sind da.",
  "way-in.tight":
    "{passage}: verlangt Vorsicht ({check}); {needed}\u00A0{unit} sind nötig, {available}\u00A0{unit} sind da.",
  "way-in.in-this-manner": "{passage}: Die Kiste passt nur auf diese Weise: {manner}.",
  "way-in.not-measured": "{passage}: nicht gemessen ({check}); {needed}\u00A0{unit} sind nötig.",
  "way-in.slope-not-known": "{passage}: Niemand hat die Steigung angegeben.",
  "way-in.steep":
    "{passage}: steil, {slopePercent}\u00A0% Steigung; bis zu {gentlePercent}\u00A0% sind sanft.",
  "way-in.no-passages":
    "Der Ort hat seinen Weg hinein nicht beschrieben. Die Kiste misst {lengthMm} × {widthMm} × {heightMm}\u00A0mm, {grossMassKg}\u00A0kg.",
  "way-in.size-not-known": "Es wurde nicht gemessen und gewogen, daher ist seine Kiste nicht bekannt.",
  "way-in.beyond-tables":
    "Keine Kiste der Tabellen nimmt es auf; seine Kiste muss von Hand entworfen werden.",
  "way-in.crate-holds": "Eine Kiste der Liste schützt es bis {peakG}\u00A0G.",
  "way-in.no-cushion-holds": "Kein Polster der Liste hält Stöße unter {peakG}\u00A0G.",
  "way-in.crate-topples": "Seine Kiste ist hoch auf schmaler Grundfläche.",
  "way-in.engineered-base": "Seine Kiste ist so schwer, dass ihr Boden entworfen werden muss.",

  "cover.cost-stated": "Ersatzkosten {minor}, {basis}, angegeben am {statedOn}.",
  "cover.cost-not-known": "Seine Ersatzkosten sind nicht bekannt.",
  "cover.cost-old": "Seine Ersatzkosten wurden am {statedOn} angegeben, vor mehr als 12 Monaten.",
  "cover.not-stated": "Keine Deckung ist angegeben; benötigt werden {neededMinor}.",
  "cover.stated": "Angegebene Deckung: {minor}; benötigt werden {neededMinor}.",
  "cover.certified": "Bescheinigte Deckung: {minor}; benötigt werden {neededMinor}.",
  "cover.too-low": "Die Deckung von {minor} liegt unter den {neededMinor}, die benötigt werden.",
  "cover.other-currency": "Die Deckung lautet auf {currency}, die Ersatzkosten auf {neededCurrency}.",
  "cover.sum-not-known":
    "Die Ersatzkosten von {unknown} [unknown:Präparat|Präparaten] sind nicht bekannt, die Summe daher auch nicht.",
};
