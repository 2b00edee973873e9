/** What the rules of lending find, in French. Nothing here says that something is lawful. */

/** Quantities of the room, with the unit in which they are told. */
const quantities = [
  ["temperature", "Température", "\u00A0°C"],
  ["temperature-change", "Variation de température en 24\u00A0h", "\u00A0K"],
  ["humidity", "Humidité relative", "\u00A0%"],
  ["humidity-change", "Variation d’humidité relative en 24\u00A0h", "\u00A0%"],
  ["illuminance", "Éclairement", "\u00A0lx"],
  ["light-of-year", "Lumière de l’année, celle déjà reçue comprise", "\u00A0lx·h"],
  ["ultraviolet", "Ultraviolet", "\u00A0µW/lm"],
] as const;

function ofQuantity(code: string, name: string, unit: string): [string, string][] {
  const isBand = code === "temperature" || code === "humidity";
  const stated = isBand ? `de {statedLow} à {statedHigh}${unit}` : `{statedHigh}${unit}`;
  const clear = isBand ? `de {clearLow} à {clearHigh}${unit}` : `jusqu’à {clearHigh}${unit}`;
  const bar = isBand ? `de {barLow} à {barHigh}${unit}` : `jusqu’à {barHigh}${unit}`;
  const limit = isBand ? bar : `{barHigh}${unit}`;
  return [
    [`climate.${code}-within`, `${name}\u00A0: ${stated}, dans la plage (${clear}).`],
    [`climate.${code}-outside-warn`, `${name}\u00A0: ${stated}\u00A0; le spécimen demande ${clear}.`],
    [`climate.${code}-outside-alarm`, `${name}\u00A0: ${stated}\u00A0; le spécimen supporte ${bar}.`],
    [`climate.${code}-over-target`, `${name}\u00A0: ${stated}\u00A0; il est souhaité ${clear}.`],
    [`climate.${code}-over-limit`, `${name}\u00A0: ${stated}\u00A0; la limite est ${limit}.`],
    [`climate.${code}-not-stated`, `${name}\u00A0: le lieu n’a rien indiqué.`],
    [`climate.${code}-no-common-band`, `${name}\u00A0: les spécimens n’ont aucune plage commune.`],
  ];
}

export const frenchLoanFindings: Readonly<Record<string, string>> = {
  "reason.withheld": "La raison est connue du prêteur et du service des prêts de votre maison.",
  "reason.cost-withheld":
    "Il s’agit du coût de remplacement et de la couverture\u00A0; le service des prêts garde les chiffres.",
  "reason.person-withheld":
    "Il s’agit du donneur ou de la donneuse\u00A0; la personne chargée des dons de corps connaît la raison.",

  "consent.animal": "Un spécimen animal ({species})\u00A0: aucun consentement n’est demandé.",
  "consent.granted": "Le consentement permet\u00A0: {scope}.",
  "consent.refused": "Le consentement refuse\u00A0: {scope}.",
  "consent.not-asked": "La question n’a jamais été posée au donneur ou à la donneuse\u00A0: {scope}.",
  "consent.not-known": "Le souhait du donneur ou de la donneuse n’est pas connu sur ce point\u00A0: {scope}.",
  "consent.audience-within":
    "Le public ({audience}) reste dans la limite fixée par le donneur ou la donneuse ({limit}).",
  "consent.audience-outside":
    "Limite fixée par le donneur ou la donneuse\u00A0: {limit}\u00A0; la demande vise un autre public\u00A0: {audience}.",
  "consent.audience-not-known": "On ne sait pas à qui le donneur ou la donneuse souhaitait être montré.",
  "consent.no-record": "Aucun consentement n’est enregistré pour ce spécimen.",
  "consent.no-record-of-one":
    "{donors} de ses donneurs et donneuses [donors:n’a|n’ont] aucun consentement enregistré.",
  "consent.not-withdrawn": "Le consentement n’a pas été retiré.",
  "consent.withdrawn": "Le consentement a été retiré, avec effet au {effectiveOn}.",
  "consent.withdrawal-later": "Le consentement a été retiré avec effet au {effectiveOn}, après le prêt.",
  "consent.outlasts-loan": "Le consentement vaut au-delà du {neededUntil}.",
  "consent.ends": "Le consentement prend fin le {validUntil}\u00A0; il doit valoir jusqu’au {neededUntil}.",
  "consent.review-due": "Le consentement est à revoir avant le {reviewDueOn}.",
  "consent.territory-within": "Le pays ({country}) fait partie de ce que le donneur ou la donneuse a permis.",
  "consent.territory-outside": "Le pays ({country}) est hors de ce que le donneur ou la donneuse a permis.",
  "consent.transit-within":
    "Le trajet passe par ce pays\u00A0: {country}\u00A0; le donneur ou la donneuse l’a permis.",
  "consent.transit-refused":
    "Le trajet passe par ce pays\u00A0: {country}\u00A0; le donneur ou la donneuse l’a refusé.",
  "consent.transit-not-listed":
    "Le trajet passe par ce pays\u00A0: {country}\u00A0; il n’est pas parmi ceux que le donneur ou la donneuse a permis.",
  "consent.not-commercial": "Aucune entrée n’est payante et rien n’est promu.",
  "consent.paid-display-not-granted": "L’entrée est payante, et la présentation payante n’a pas été permise.",
  "consent.non-commercial-only":
    "L’entrée est payante, et le consentement ne vaut que pour un usage non commercial.",
  "consent.likeness-not-granted":
    "La présentation promeut quelque chose, et l’usage de l’image de la personne à cette fin n’a pas été permis.",
  "consent.no-pictures": "Aucune image n’est prévue.",
  "consent.pictures-granted": "Les images sont permises pour cet usage\u00A0: {picture}.",
  "consent.pictures-refused":
    "Les images sont exclues pour cet usage, le donneur ou la donneuse les a refusées\u00A0: {picture}. Le prêt lui-même peut se poursuivre.",
  "consent.pictures-not-known":
    "Les images sont exclues pour cet usage, elles n’ont pas été permises\u00A0: {picture}. Le prêt lui-même peut se poursuivre.",
  "consent.activity-refused":
    "Usage exclu, le donneur ou la donneuse l’a refusé\u00A0: {activity}. Le prêt lui-même peut se poursuivre.",
  "consent.activity-not-known":
    "Usage exclu, il n’a pas été permis\u00A0: {activity}. Le prêt lui-même peut se poursuivre.",
  "consent.not-recognisable": "Personne ne peut être reconnu.",
  "consent.identifiable": "Un visage, une marque ou un nom rend la personne reconnaissable.",
  "consent.minor": "Le donneur ou la donneuse était jeune.",
  "consent.foetal": "Matériel fœtal, donné par les parents.",
  "consent.age-not-known": "L’âge du donneur ou de la donneuse n’est pas connu.",
  "consent.recognisable-not-known": "On ne sait pas si quelqu’un pourrait être reconnu.",
  "consent.basis": "Fondement du don\u00A0: {basis}.",
  "consent.basis-without-own-word":
    "Le corps est venu sans la parole de la personne elle-même\u00A0: {basis}.",
  "consent.disposition-later": "Destination finale\u00A0: {disposition}.",
  "consent.disposition-due":
    "Dû le {dueOn} au plus tard\u00A0: {disposition}\u00A0; avec les jours qui suivent, le prêt va jusqu’au {neededUntil}.",
  "consent.disposition-not-known": "On ne sait pas si ni quand le spécimen est dû ({disposition}).",
  "consent.claim-pending": "Quelqu’un le revendique ou demande son retour, et rien n’est réglé.",
  "consent.composite":
    "Il provient de {donors} donneurs et donneuses\u00A0; la plus stricte de leurs limites vaut pour le tout.",
  "consent.age-of-specimen": "Son âge est connu depuis\u00A0: {since}.",
  "consent.age-of-specimen-not-known":
    "Personne ne connaît l’âge du spécimen\u00A0; il est tenu pour récent.",
  "consent.style-didactic": "La manière de montrer est didactique.",
  "consent.style": "La manière de montrer est {style}.",

  "title.owned": "Le spécimen appartient au centre.",
  "title.no-record": "Il n’est pas enregistré à qui le spécimen appartient.",
  "title.no-leave":
    "Il n’appartient pas au centre ({status}), et aucun accord écrit de son propriétaire n’existe.",
  "title.leave": "Son propriétaire, {owner}, a donné son accord\u00A0: {reference}.",
  "title.leave-but-unsettled":
    "État de la propriété\u00A0: {status}\u00A0; un accord a été donné\u00A0: {reference}.",

  "permits.activity-permitted":
    "Permission écrite du centre ({activity})\u00A0: {number}, jusqu’au {validUntil}.",
  "permits.activity-not-permitted":
    "Aucune permission écrite du centre n’est enregistrée à cette fin\u00A0: {activity}. Le prêt lui-même peut se poursuivre.",
  "permits.activity-permission-days":
    "La permission écrite {number} ({activity}) ne couvre pas tous les jours du prêt.",
  "permits.activity-permission-country":
    "La permission écrite {number} ({activity}) ne vaut pas pour ce pays\u00A0: {country}.",

  "free.days": "Libre du {from} au {to}.",
  "free.taken": "Il est pris ailleurs certains jours entre le {from} et le {to}.",
  "free.taken-until":
    "Il est pris ailleurs certains de ces jours. Tous les jours demandés sont libres à partir du {freeFrom}.",
  "free.lead-time": "{days} [days:jour|jours] jusqu’à la livraison\u00A0; l’usage est de {usual}.",
  "free.lead-time-short":
    "Seulement {days} [days:jour|jours] jusqu’à la livraison\u00A0; l’usage est de {usual} pour constats, emballage et route.",
  "free.at-home": "Il n’est dans aucun autre prêt.",
  "free.notice": "Demandé {days} [days:jour|jours] à l’avance\u00A0; l’usage est de {usual}.",
  "free.notice-short":
    "Demandé seulement {days} [days:jour|jours] à l’avance\u00A0; l’usage est de {usual} pour un tel prêt.",
  "free.length": "Le prêt dure {days} [days:jour|jours]\u00A0; l’usage va jusqu’à {usual}.",
  "free.long": "Le prêt dure {days} [days:jour|jours]\u00A0; de tels prêts durent jusqu’à {usual}.",
  "free.too-long": "Le prêt dure {days} [days:jour|jours]\u00A0; aucun ne dure plus de {usual}.",
  "free.not-lent-of-late": "Il n’a pas été prêté depuis un an.",
  "free.rested": "Au repos depuis le {endedOn}, {days} [days:jour|jours]\u00A0; il en faut {needed}.",
  "free.not-rested":
    "Au repos depuis le {endedOn}, seulement {days} [days:jour|jours]\u00A0; il en faut {needed}.",
  "free.missing": "Il manque depuis le prêt {loan}.",
  "free.overdue": "Il est encore dans le prêt {loan}, dont le retour était dû le {dueOn}.",
  "free.away": "Il est dans le prêt {loan} jusqu’au {dueOn}.",

  "condition.never-checked": "Aucun constat n’a jamais été fait.",
  "condition.grade": "État\u00A0: niveau {grade} le {checkedOn}.",
  "condition.grade-poor": "État\u00A0: niveau {grade} le {checkedOn}, mauvais.",
  "condition.grade-signed-off":
    "État\u00A0: niveau {grade} le {checkedOn}, mauvais. La conservation-restauration a donné son accord le {signedOffOn}.",
  "condition.grade-not-acceptable": "État\u00A0: niveau {grade} le {checkedOn}, inacceptable.",
  "condition.recent": "Constat du {checkedOn}\u00A0; il suffit jusqu’au {servesUntil}.",
  "condition.too-old": "Le dernier constat, du {checkedOn}, a plus de 12 mois.",
  "condition.fit": "D’après le constat du {checkedOn}, apte à ce qui est demandé.",
  "condition.unfit": "D’après le constat du {checkedOn}, inapte\u00A0: {unfitTo}.",
  "condition.no-unknown-activity": "Chaque altération a été jugée sans évolution ou en évolution.",
  "condition.unknown-activity":
    "De {unknown} [unknown:altération|altérations], personne n’a dit si [unknown:elle est|elles sont] en évolution.",

  "use.viewing": "Il est regardé et non manipulé.",
  "use.handling": "Il peut être manipulé.",
  "use.viewing-only": "Il ne peut être que regardé\u00A0; la demande prévoit la manipulation.",
  "use.no-hazard": "Aucune substance dangereuse ne s’oppose à cet usage.",
  "use.hazard-in-hand": "Des substances dangereuses touchent les mains\u00A0: {substances}.",
  "use.no-spill-provision": "Le lieu n’a rien pour un liquide renversé ({fluid}).",
  "use.spill-not-known": "Le lieu n’a pas indiqué ce qu’il a pour un liquide renversé ({fluid}).",
  "use.supervised": "{venue}\u00A0: une salle surveillée.",
  "use.not-supervised": "{venue}\u00A0: sans surveillance.",
  "use.supervision-not-known": "{venue}\u00A0: il n’est pas indiqué si la salle est surveillée.",
  "use.open-view": "{venue}\u00A0: des spécimens humains y sont visibles sans qu’on l’ait choisi.",
  "use.view-not-known": "{venue}\u00A0: il n’est pas indiqué si l’on choisit d’y voir des spécimens humains.",
  "use.borrower-known": "L’emprunteur est connu et rien ne lui est reproché.",
  "use.borrower-not-verified": "Personne n’a encore vérifié l’emprunteur.",
  "use.borrower-on-hold": "L’emprunteur est suspendu\u00A0: aucun nouveau prêt.",
  "use.no-earlier-loan": "L’emprunteur n’a eu aucun prêt depuis trois ans.",
  "use.good-record": "{loans} [loans:prêt|prêts] en trois ans, de retour à temps et sans dommage.",
  "use.record-with-marks":
    "Sur {loans} [loans:prêt|prêts] en trois ans, retours tardifs\u00A0: {late}\u00A0; {damaged} [damaged:spécimen est revenu endommagé|spécimens sont revenus endommagés].",
  "use.whole-run":
    "Une suite entière de coupes, de {first} à {last}\u00A0; la série ne possède pas {absent} de ces numéros.",
  "use.gaps-in-run":
    "{left} [left:coupe|coupes] entre {first} et {last} [left:resterait|resteraient] sur place.",
  "use.run-not-known": "On ne sait pas quelles coupes la série possède.",
  "use.next-venue":
    "Il partirait directement du prêt {loan}, dont le retour est dû le {dueOn}\u00A0; aucun contrat ne nomme un lieu suivant.",
  "use.own-venue": "{venue}\u00A0: un lieu de l’emprunteur.",
  "use.lending-on": "{venue}\u00A0: le lieu d’une autre maison\u00A0; ce serait prêter à son tour.",

  ...Object.fromEntries(quantities.flatMap(([code, name, unit]) => ofQuantity(code, name, unit))),
  "climate.no-report": "{venue}\u00A0: aucun rapport sur le bâtiment avec une date.",
  "climate.old-report":
    "{venue}\u00A0: le rapport sur le bâtiment est du {reportedOn}, vieux de plus de deux ans.",

  "light.left":
    "Lumière qui reste sur l’année\u00A0: {left} sur {yearly}\u00A0lx·h\u00A0; {spent}\u00A0lx·h ont été reçus en prêt.",
  "light.little-left":
    "Il reste peu de lumière sur l’année\u00A0: {left} sur {yearly}\u00A0lx·h\u00A0; {spent}\u00A0lx·h ont été reçus en prêt.",
  "light.none-left":
    "Il ne reste plus de lumière sur l’année\u00A0: {spent}\u00A0lx·h ont été reçus en prêt, {yearly} sont permis.",
  "light.spent-not-known": "La lumière reçue en prêt depuis un an n’est pas connue.",

  "way-in.floor-light":
    "Sa caisse, {grossMassKg}\u00A0kg, est aussi légère que ce que des personnes portent.",
  "way-in.floor-not-known":
    "Ce que le sol supporte n’est pas connu\u00A0; la caisse exerce {load}\u00A0kg/m².",
  "way-in.floor-bears": "Le sol supporte {floor}\u00A0kg/m²\u00A0; la caisse exerce {load}\u00A0kg/m².",
  "way-in.floor-near": "La caisse exerce {load}\u00A0kg/m², près des {floor}\u00A0kg/m² que le sol supporte.",
  "way-in.floor-too-weak": "La caisse exerce {load}\u00A0kg/m²\u00A0; le sol supporte {floor}\u00A0kg/m².",
  "way-in.passes":
    "Sa caisse ({lengthMm} × {widthMm} × {heightMm}\u00A0mm, {grossMassKg}\u00A0kg) passe sur tout le chemin, avec {spareMm}\u00A0mm de marge.",
  "way-in.too-narrow":
    "{passage}\u00A0: trop étroit pour la caisse ({check})\u00A0; il faut {needed}\u00A0{unit}, il y a {available}\u00A0{unit}.",
  "way-in.tight":
    "{passage}\u00A0: demande de la prudence ({check})\u00A0; il faut {needed}\u00A0{unit}, il y a {available}\u00A0{unit}.",
  "way-in.in-this-manner": "{passage}\u00A0: la caisse ne passe que de cette manière\u00A0: {manner}.",
  "way-in.not-measured": "{passage}\u00A0: non mesuré ({check})\u00A0; il faut {needed}\u00A0{unit}.",
  "way-in.slope-not-known": "{passage}\u00A0: personne n’a indiqué la pente.",
  "way-in.steep":
    "{passage}\u00A0: pente forte de {slopePercent}\u00A0%\u00A0; elle est douce jusqu’à {gentlePercent}\u00A0%.",
  "way-in.no-passages":
    "Le lieu n’a pas décrit son accès. La caisse mesure {lengthMm} × {widthMm} × {heightMm}\u00A0mm, {grossMassKg}\u00A0kg.",
  "way-in.size-not-known": "Il n’a été ni mesuré ni pesé, et sa caisse n’est donc pas connue.",
  "way-in.beyond-tables":
    "Aucune caisse des tableaux ne le contient\u00A0; sa caisse doit être conçue à la main.",
  "way-in.crate-holds": "Une caisse de la liste le protège jusqu’à {peakG}\u00A0G.",
  "way-in.no-cushion-holds": "Aucun calage de la liste ne garde les chocs sous {peakG}\u00A0G.",
  "way-in.crate-topples": "Sa caisse est haute sur une base étroite.",
  "way-in.engineered-base": "Sa caisse est si lourde que sa base doit être conçue.",

  "cover.cost-stated": "Coût de remplacement {minor}, {basis}, indiqué le {statedOn}.",
  "cover.cost-not-known": "Son coût de remplacement n’est pas connu.",
  "cover.cost-old": "Son coût de remplacement a été indiqué le {statedOn}, il y a plus de 12 mois.",
  "cover.not-stated": "Aucune couverture n’est indiquée\u00A0; il faut {neededMinor}.",
  "cover.stated": "Couverture indiquée\u00A0: {minor}\u00A0; il faut {neededMinor}.",
  "cover.certified": "Couverture attestée\u00A0: {minor}\u00A0; il faut {neededMinor}.",
  "cover.too-low": "La couverture de {minor} est inférieure aux {neededMinor} nécessaires.",
  "cover.other-currency":
    "La couverture est en {currency}, les coûts de remplacement sont en {neededCurrency}.",
  "cover.sum-not-known":
    "Le coût de remplacement de {unknown} [unknown:spécimen|spécimens] n’est pas connu, et la somme non plus.",
};
