/** What the papers for customs say, in French. */
import type { CustomsWords } from "#lib/papers/customs-words.ts";

export const frenchCustoms: CustomsWords = {
  about: {
    "pro-forma invoice": "Pour la douane seulement. Rien n’est vendu, et rien n’est à payer sur ce papier.",
    "carnet list":
      "Les marchandises d’une admission temporaire sous carnet, dans l’ordre de sa liste générale. À recopier sur la formule de la chambre émettrice.",
  },
  incomplete: {
    lead: "Incomplète.",
    codes: "Sans code tarifaire aux deux bouts\u00A0: {codes}.",
    values: "Sans valeur\u00A0: {values}.",
  },
  sender: "Expéditeur",
  receiver: "Destinataire",
  what: "De quoi il s’agit",
  reason: "Motif",
  reasons: {
    out: "Exportation temporaire pour un prêt. Les marchandises reviennent\u00A0: elles doivent quitter le lieu le {day} au plus tard. But du prêt\u00A0: {purpose}.",
    home: "Retour de marchandises prêtées et exportées pour un temps. Ce sont les mêmes marchandises, sous les mêmes numéros. But du prêt\u00A0: {purpose}.",
  },
  noSale: "Aucune vente",
  noSaleText: "Le prêt ne change aucune propriété, et aucun prix n’est payé pour les spécimens.",
  human: "D’origine humaine",
  humanText:
    "N° {numbers}\u00A0: spécimens anatomiques conservés d’origine humaine, prêtés pour le but indiqué et non destinés à la vente.",
  fluid: "Liquides et substances",
  fluidText: "N° {numbers}\u00A0: {fluid}.",
  fluidOther:
    "Ce papier n’est pas une déclaration de marchandises dangereuses. S’il en faut une\u00A0: à vérifier auprès du transporteur.",
  permits: "Permis",
  permitsText:
    "Les permis de protection des espèces, ou ceux d’une loi sur les tissus humains ou les biens culturels, accompagnent ce papier là où ils sont demandés. À vérifier auprès de l’autorité locale aux deux bouts.",
  goods: "Marchandises",
  number: "N°",
  accessionNumber: "Numéro d’inventaire",
  description: "Désignation, marques et numéros",
  crate: "Caisse",
  pieces: "Nombre",
  mass: "Net kg",
  origin: "Pays d’origine",
  code: "Code tarifaire",
  value: "Valeur en douane",
  valueIn: "Valeur en douane, {currency}",
  notStated: "–",
  total: "Toutes les marchandises",
  totalAtLeast: "Toutes les marchandises, au moins\u00A0: toutes les valeurs ne sont pas indiquées",
  animal: "d’origine animale, {species}",
  basis: "Base de la valeur",
  basisText:
    "La douane demande un chiffre. Celui qui est donné est le coût de remplacement pour la couverture\u00A0: ce qu’il faut pour préparer ou remplacer, ou ce qui est convenu avec qui en est propriétaire. Ce n’est pas un prix, et il ne dit rien de ce que vaut un spécimen.",
  basisOf: "N° {numbers}\u00A0: {basis}, indiqué le {day}.",
  codes: "Codes tarifaires et qui les a déterminés",
  codesLead:
    "Un code vaut pour le pays pour lequel il est déterminé. Le programme n’en tire aucun du genre du spécimen.",
  country: "Pays",
  specimens: "N°",
  decidedBy: "Déterminé par",
  decidedOn: "Le",
  note: "Remarque",
  open: "non déterminé",
  packages: "Colis",
  outer: "Dimensions extérieures",
  gross: "Brut kg",
  byHand: "À écrire à la main",
  fields: {
    "pro-forma invoice": [
      "Importateur",
      "Numéro douanier ou fiscal de l’expéditeur",
      "Numéro douanier ou fiscal du destinataire",
      "Conditions de livraison",
      "Bureau de douane d’exportation",
      "Bureau de douane d’importation",
    ],
    "carnet list": [
      "Numéro du carnet",
      "Chambre émettrice",
      "Titulaire",
      "Représenté par",
      "Valable jusqu’au",
      "Pays et transits (combien de volets)",
    ],
  },
  carnet: "Ce qui vaut pour un carnet",
  carnetRows: [
    {
      term: "Liste close",
      text: "Une fois le carnet émis, rien n’est ajouté à la liste ni échangé. Ce qui reste n’est pas porté sur le volet.",
    },
    {
      term: "Douze mois",
      text: "Un carnet vaut douze mois au plus, et certains pays donnent moins. Toutes les marchandises sont de retour avant sa fin. À vérifier auprès de la chambre émettrice.",
    },
    {
      term: "Mêmes marchandises",
      text: "Les marchandises se reconnaissent au numéro d’inventaire, aux éléments et aux images. Chaque passage est tamponné, à l’aller et au retour.",
    },
    {
      term: "À quoi il sert",
      text: "Si des spécimens humains peuvent voyager sous carnet, et pour quel but\u00A0: à vérifier auprès de la chambre émettrice et de la douane de chaque pays.",
    },
  ],
  declaration: "Déclaration",
  declared: "Les indications de ce papier sont vraies et complètes, à la connaissance de l’expéditeur.",
  party: "Pour l’expéditeur",
  signature: "Signature",
  name: "Nom",
  place: "Lieu et jour",
};
