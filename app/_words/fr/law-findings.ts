/**
 * What the rules that touch law find, and the ways out, in French. Every sentence
 * ends by sending the reader to the local authority; none says by the program's
 * own word that something is lawful or not.
 */

export const frenchEndOfLaw = "À vérifier auprès de l’autorité locale.";

/** Sentences with the one end that all of them have. */
const endingAlike = (sentences: Readonly<Record<string, string>>): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(sentences).map(([code, sentence]) => [code, `${sentence} ${frenchEndOfLaw}`]),
  );

/** One kind of paper and the ways in which it may serve or not. */
const ofPaper = (code: string, name: string) => ({
  [`law.${code}`]: `${name} au dossier\u00A0: {number}, {authority}, jusqu’au {validUntil}.`,
  [`law.${code}-vague`]: `${name} {number}\u00A0: le pays ou la date de fin n’est pas indiqué.`,
  [`law.${code}-days`]: `${name} {number}\u00A0: les jours du prêt ne sont pas couverts\u00A0; la fin est le {validUntil}.`,
  [`law.${code}-country`]: `${name} {number}\u00A0: ne vaut pas pour ce pays\u00A0: {country}.`,
});

export const frenchLawFindings = endingAlike({
  "permits.no-border": "Aucune frontière n’est franchie.",
  "permits.not-public":
    "Rien n’est montré au public, aucune autorisation de présentation n’est donc demandée ici.",

  "law.licence": "Autorisation pour {venue} ({licence})\u00A0: {number}, {authority}, jusqu’au {validUntil}.",
  "law.licence-missing": "Aucune autorisation pour {venue} ({licence}) n’est enregistrée.",
  "law.licence-vague": "L’autorisation {number} pour {venue} ({licence}) ne dit pas jusqu’à quand elle vaut.",
  "law.licence-days":
    "L’autorisation {number} pour {venue} ({licence}) ne couvre pas les jours du prêt\u00A0; elle prend fin le {validUntil}.",
  ...ofPaper("import-paper", "Papier d’importation"),
  ...ofPaper("export-licence", "Licence d’exportation"),
  ...ofPaper("species-paper", "Papier de protection des espèces"),
  ...ofPaper("veterinary-paper", "Certificat vétérinaire"),
  "law.cells-not-known": "Il n’est pas enregistré s’il contient du tissu avec des cellules.",
  "law.death-papers": "Les papiers sur la cause et la déclaration du décès sont au dossier.",
  "law.no-death-papers": "Les papiers sur la cause et la déclaration du décès ne sont pas au dossier.",

  "law.uk-before-the-century":
    "Le décès est antérieur au 1er septembre 1906, avant les années que compte la loi sur les tissus humains.",
  "law.uk-hundred-years":
    "Le décès remonte à cent ans, mais après le 1er septembre 1906\u00A0; l’autorité de contrôle dit comment se comptent les cent ans.",
  "law.uk-recent":
    "Le décès n’est pas ancien, la règle de la loi sur les autorisations de présentation est donc regardée.",
  "law.uk-death-not-known": "La date du décès n’est pas connue\u00A0; il est donc tenu pour récent.",
  "law.uk-licence-off":
    "Pour un décès antérieur au 1er septembre 1906, aucune autorisation de présentation n’est cherchée ici.",
  "law.uk-own-consent":
    "La parole de chaque donneur et donneuse est écrite avec un témoin, ou dans un testament.",
  "law.uk-no-own-consent":
    "La parole de la personne, écrite avec un témoin ou dans un testament, n’est pas enregistrée pour chaque donneur et donneuse\u00A0; les proches ne peuvent la donner pour cet usage.",
  "law.uk-witness-not-known":
    "Il n’est pas enregistré quand la parole d’un donneur ou d’une donneuse a été signée, ni si quelqu’un en a été témoin.",
  "law.uk-existing":
    "Détenu depuis\u00A0: {since}, avant la loi sur les tissus humains\u00A0; son consentement n’est pas redemandé.",
  "law.uk-not-existing":
    "Détenu depuis\u00A0: {since}, après l’entrée en vigueur de la loi sur les tissus humains.",
  "law.uk-held-not-known":
    "On ne sait pas depuis quand il est détenu\u00A0; il est tenu pour détenu après septembre 2006.",
  "law.uk-origin-not-proved": "Il est importé, et aucun papier ne prouve une origine avec consentement.",
  "law.uk-not-anatomical": "Il n’a pas servi à un examen anatomique.",
  "law.uk-examination-not-known": "Il n’est pas enregistré s’il a servi à un examen anatomique.",
  "law.uk-no-cells": "D’après sa fiche, il ne contient aucun tissu avec des cellules.",

  "law.scotland-or-not":
    "On ne sait pas si ce lieu est en Écosse, où une loi propre parle de la présentation au public\u00A0: {venue}.",
  "law.scotland-not-examined": "D’après sa fiche, il n’a pas servi à un examen anatomique.",

  "law.ireland-no-authorisation":
    "Aucune autorisation préalable n’est enregistrée pour le faire entrer en vue d’un examen anatomique\u00A0; elle nomme spécimen, but, temps et lieu.",
  "law.ireland-register":
    "L’origine, le consentement et les papiers du décès sont enregistrés pour le registre.",
  "law.ireland-register-lacks":
    "Le registre du titulaire de l’autorisation demande ce qui n’est pas enregistré\u00A0: {lacking}.",

  "law.germany-artistic": "Un tribunal a jugé l’usage artistique d’un corps contraire au droit funéraire.",
  "law.germany-promotional":
    "La présentation promeut quelque chose\u00A0; des tribunaux ont examiné de telles présentations selon le droit funéraire.",
  "law.germany-didactic": "La manière de montrer est didactique.",
  "law.germany-no-demonstration": "Aucune dissection ni préparation devant des visiteurs n’est prévue.",
  "law.germany-declared":
    "Une dissection ou une préparation devant des visiteurs est prévue\u00A0; chaque donneur et donneuse s’est prononcé pour le prélèvement et pour la présentation.",
  "law.germany-not-declared":
    "Une dissection ou une préparation devant des visiteurs est prévue, et les déclarations des donneurs et donneuses ne vont pas jusque-là.",
  "law.germany-injustice":
    "Il est venu, ou a pu venir, par une injustice ou sans la parole libre de quiconque.",
  "law.germany-no-injustice": "Aucun contexte d’injustice n’apparaît dans ce qui est enregistré.",
  "law.germany-context-not-known": "On ne sait pas dans quelles circonstances il est venu.",

  "law.france-commercial": "Un tribunal a interdit une exposition commerciale de corps humains.",
  "law.france-not-commercial": "Aucune entrée n’est payante et rien n’est promu.",
  "law.france-proof": "Des tribunaux ont demandé la preuve de l’origine et du consentement donné du vivant.",

  "law.us-named-purpose": "Le but ({purpose}) est de ceux que nomment les lois sur les dons anatomiques.",
  "law.us-display-named": "Le don de chaque donneur et donneuse nomme la présentation.",
  "law.us-display-not-named":
    "Le don ne nomme pas cette présentation, et les États lisent cela différemment.",
  "law.us-no-money": "Aucune entrée n’est payante et rien n’est promu.",
  "law.us-over-hundred": "Le décès remonte à plus de cent ans.",
  "law.us-presumed-house":
    "La maison est d’un type dont le code peut présumer qu’elle a ses papiers\u00A0; son accréditation n’est pas connue ici.",
  "law.us-authority-to-judge":
    "Une autorité écrite de chaque donneur et donneuse est enregistrée\u00A0; la direction de la santé en juge.",
  "law.us-no-authority":
    "Une présentation payante demande une autorité écrite valable, qui n’est pas enregistrée.",
  "law.us-over-eighty": "Le décès remonte à plus de quatre-vingts ans, ce qu’un texte de 2009 excepte.",
  "law.us-commercial-hawaii":
    "Un texte de 2009 s’oppose à la présentation commerciale des morts\u00A0; s’il a été adopté reste à vérifier.",
  "law.us-california-signs":
    "Un projet de 2008 voulait des panneaux à l’entrée et un catalogue des consentements\u00A0; pour autant qu’on sache, ce n’est pas une loi.",
  "law.us-state-not-known":
    "On ne sait pas dans quel État se trouve ce lieu, et les États ont leurs propres textes\u00A0: {venue}.",
  "law.us-not-remains":
    "Os propre et sec, ou rien qui ait des cellules\u00A0: la règle sur l’importation de restes l’excepte.",
  "law.us-not-infectious":
    "Les papiers disant que le matériel ne porte aucune infection ne sont pas enregistrés pour la frontière.",
  "law.us-no-tissue": "Il ne contient aucun tissu, le doute sur le code douanier ne se pose donc pas.",
  "law.us-tariff-decided": "Un commissionnaire en douane a décidé du code douanier.",
  "law.us-tariff-open":
    "Deux positions douanières sont discutées pour les tissus, et aucun commissionnaire n’a décidé.",

  "law.union-export-over":
    "Il quitte l’Union\u00A0; au-delà d’un âge ou d’un coût, un bien culturel demande une licence d’exportation, et le coût est élevé ou inconnu.",
  "law.union-export-below":
    "Il quitte l’Union\u00A0; son coût est sous le seuil de l’Union, et le droit national peut malgré tout demander une licence.",
  "law.union-origin-not-known": "Il n’est pas enregistré de quel pays il vient.",
  "law.union-made-there": "Il vient de l’Union ({country}).",
  "law.union-import-below":
    "Origine\u00A0: {country}. Il est sous l’âge ou le coût à partir desquels l’importateur fait une déclaration.",
  "law.union-statement":
    "Origine\u00A0: {country}. Il a plus de 200 ans et coûte 18\u00A0000\u00A0EUR ou davantage.",
  "law.union-age-or-cost-not-known": "Origine\u00A0: {country}. Son âge ou son coût n’est pas connu.",
  "law.union-complete-preparation":
    "Une préparation anatomique achevée ({preparation})\u00A0; une déclaration en ce sens l’accompagne.",
  "law.veterinary-missing":
    "Sa préparation n’est pas achevée, et aucun certificat vétérinaire n’est enregistré.",

  "law.species-not-listed": "{species}\u00A0: d’après sa fiche, dans aucune annexe.",
  "law.species-not-known":
    "{species}\u00A0: il n’est pas enregistré si l’espèce est protégée dans ce pays\u00A0: {country}.",
  "law.species-listed":
    "{species}\u00A0: espèce protégée (annexe {appendix}), et aucun numéro n’est enregistré.",
  "law.genes-not-used": "Rien n’est prélevé, aucune ressource génétique n’est donc utilisée.",
  "law.genes-sampled": "Un prélèvement peut utiliser une ressource génétique.",
  "law.fluid-not-classed": "Son liquide ({fluid}) n’est pas connu comme marchandise dangereuse.",
  "law.fluid-weak-formaldehyde":
    "Solution de formaldéhyde à {percent}\u00A0%, d’une teneur que les transporteurs aériens ne classent pas\u00A0; certains peuvent s’en écarter.",
  "law.fluid-small-quantity":
    "{freeFluidMl}\u00A0ml de liquide libre ({fluid})\u00A0: jusqu’à {limitMl}\u00A0ml, il part comme petite quantité, en triple emballage scellé avec absorbant.",
  "law.fluid-declared":
    "{freeFluidMl}\u00A0ml de liquide libre ({fluid}), plus qu’une petite quantité ({limitMl}\u00A0ml).",
  "law.fluid-volume-not-known": "La quantité de liquide libre ({fluid}) qu’il contient n’est pas connue.",
  "law.fluid-not-known": "Le liquide qu’il contient, et sa teneur, ne sont pas assez bien connus.",
  "law.carnet-fits": "Absent {days} [days:jour|jours], dans la durée d’un carnet.",
  "law.carnet-short-states":
    "Absent {days} [days:jour|jours]\u00A0; certains États ne donnent que {shortLimit} à un carnet.",
  "law.carnet-too-long": "Absent {days} [days:jour|jours], plus que les {limit} d’un carnet.",
  "law.admission-fits":
    "Dans l’Union {days} [days:jour|jours], depuis le {since}\u00A0; l’admission temporaire dure {limit}.",
  "law.admission-too-long":
    "Dans l’Union {days} [days:jour|jours], depuis le {since}, plus que les {limit} de l’admission temporaire.",
  "law.admission-not-known": "On ne sait pas depuis quand il est dans l’Union.",

  "law.border-papers":
    "Papiers pour la frontière ({country})\u00A0: {outward} pour la sortie et {inward} pour l’entrée.",
  "law.border-not-known":
    "Il n’est pas enregistré quels papiers demande le matériel humain pour entrer dans ce pays et en revenir\u00A0: {country}.",
});

export const frenchLawWaysOut = endingAlike({
  "way.record-licence":
    "Demander au lieu son autorisation pour tous les jours du prêt, et l’enregistrer avec le lieu.",
  "way.ask-regulator": "Demander à l’autorité de contrôle, et garder la réponse avec le spécimen.",
  "way.context-file": "Chercher comment et quand il est venu, et tenir un dossier de provenance.",
  "way.strike-activity": "Rayer cette activité de la demande.",
  "way.show-didactically": "Le montrer de manière didactique.",
  "way.signs-at-entrance": "Poser des panneaux à l’entrée, et tenir un catalogue des consentements.",
  "way.no-charge": "Le montrer sans entrée payante, ou choisir un autre spécimen.",
  "way.record-origin": "Le chercher, et l’enregistrer avec le spécimen sous origine et droit.",
  "way.name-subdivision": "Nommer la partie du pays avec le lieu.",
  "way.prior-authorisation":
    "Demander l’autorisation avant toute promesse, et l’enregistrer comme permis d’importation.",
  "way.ask-order-office":
    "Avertir l’autorité municipale de l’ordre public avant le contrat, et enregistrer sa réponse.",
  "way.ask-counsel": "Demander un conseil juridique sur place avant toute promesse.",
  "way.ask-broker": "Demander à un commissionnaire en douane, et enregistrer la décision.",
  "way.ask-export-authority": "Demander si une licence d’exportation est nécessaire, et l’enregistrer.",
  "way.veterinary-certificate": "Faire établir un certificat vétérinaire, et l’enregistrer.",
  "way.ask-genes-authority": "Demander ce qu’exige la recherche sur les gènes avant tout prélèvement.",
  "way.dangerous-goods":
    "Faire déclarer le liquide par le transporteur, ou envoyer le spécimen vidé et scellé.",
  "way.shorter-or-other-customs":
    "Raccourcir le prêt, ou demander à un commissionnaire un autre régime douanier.",
  "way.species-paper": "Enregistrer le permis, ou la déclaration de l’autorité qu’aucun n’est nécessaire.",
  "way.ask-authority-border": "Demander des deux côtés de la frontière, et enregistrer les papiers.",
  "way.evidence-bundle": "Préparer la preuve de l’origine et du consentement.",
});
