/** What would clear what the rules of lending find, in French. */
export const frenchWaysOut: Readonly<Record<string, string>> = {
  "way.use-within-consent":
    "Ramener l’usage à ce que le donneur ou la donneuse a permis, ou choisir un autre spécimen.",
  "way.ask-oversight":
    "Demander la parole de l’organe de surveillance, et enregistrer son papier avec la décision.",
  "way.ask-donor-officer": "Demander à la personne chargée des dons de corps.",
  "way.donor-officer-only":
    "Il reste ici. Seule la personne chargée des dons de corps peut changer la fiche, avec une preuve\u00A0; ce qui est dehors revient.",
  "way.legacy-path":
    "Demander la parole de l’organe de surveillance, et tenir un dossier de provenance\u00A0: d’où il vient, ce qui est connu, qui a été interrogé.",
  "way.earlier-return": "Choisir un retour plus tôt, ou un autre spécimen.",
  "way.other-venue":
    "Choisir un lieu dans un pays que le donneur ou la donneuse a permis, ou un autre spécimen.",
  "way.other-route": "Choisir un trajet qui ne traverse pas ce pays, ou un autre spécimen.",
  "way.other-route-or-ask":
    "Choisir un trajet qui ne traverse pas ce pays, ou demander à la personne chargée des dons de corps.",
  "way.no-admission-charge":
    "Le montrer sans entrée payante, ou choisir un autre spécimen\u00A0; à vérifier auprès de l’autorité locale.",
  "way.no-promotion": "Le laisser hors de toute promotion.",
  "way.without-these-pictures": "Rayer ces images de la demande.",
  "way.without-this-activity": "Rayer cette activité de la demande.",
  "way.activity-permission":
    "Faire enregistrer la permission écrite du centre pour tous les jours du prêt, ou rayer cette activité de la demande.",
  "way.two-persons":
    "Faire décider deux personnes, dont la personne chargée des dons de corps et avec la parole de l’organe de surveillance.",
  "way.provenance-file": "Chercher quand il a été préparé ou est arrivé ici, et l’enregistrer.",
  "way.didactic-only": "Le montrer de manière didactique\u00A0; à vérifier auprès de l’autorité locale.",
  "way.record-title": "Enregistrer à qui il appartient.",
  "way.owners-leave": "Demander par écrit l’accord du propriétaire, et l’enregistrer.",
  "way.settle-title": "Établir à qui il appartient\u00A0; d’ici là, la gestion de la collection en répond.",
  "way.review-on-the-way": "Convenir d’un examen à mi-durée, ou choisir un retour plus tôt.",
  "way.talk-to-borrower": "Parler avec l’emprunteur de ce qui s’est passé, et convenir de conditions.",
  "way.whole-run": "Prêter la suite entière, ou convenir des coupes qui restent sur place.",
  "way.state-light": "Faire indiquer leur lumière par les lieux des prêts antérieurs.",
  "way.rest-in-dark": "Le laisser reposer dans l’obscurité, ou choisir un autre spécimen.",
  "way.spread-load":
    "Répartir la charge sur une base plus grande, choisir une salle dont le sol supporte davantage, ou déballer ailleurs.",
  "way.substitute": "Choisir un autre spécimen qui montre la même chose.",
  "way.later-or-substitute": "Choisir un jour plus tardif, ou un autre spécimen qui montre la même chose.",
  "way.later-start": "Choisir un jour de livraison plus tardif, ou convenir d’une préparation plus courte.",
  "way.call-home": "Rappeler l’autre prêt.",
  "way.watch-return": "Suivre le retour de l’autre prêt.",
  "way.check-again": "En faire faire le constat.",
  "way.treat-or-substitute": "Le faire traiter, ou choisir un autre spécimen.",
  "way.ask-conservator": "Demander à la conservation-restauration de le voir et de donner son accord.",
  "way.examine": "Faire examiner les altérations.",
  "way.viewing-only": "Enseigner par l’observation seulement, ou choisir un autre spécimen.",
  "way.risk-assessment": "Convenir de gants, d’une ventilation et d’une évaluation des risques.",
  "way.spill-tray": "Demander au lieu un bac, une ventilation et de quoi absorber un liquide renversé.",
  "way.supervise": "Demander au lieu qui est dans la salle dès que des spécimens sont utilisés.",
  "way.content-notice": "Demander un avis à l’entrée et une vue que l’on choisit.",
  "way.verify-borrower": "Vérifier une fois la maison et qui signe pour elle.",
  "way.clear-standing": "Régler d’abord ce qui est ouvert avec cet emprunteur.",
  "way.own-venue": "Choisir un lieu de l’emprunteur, ou laisser l’autre maison demander elle-même.",
  "way.state-venue": "Demander ce chiffre au lieu.",
  "way.less-light": "Baisser, filtrer, ou le montrer moins d’heures ou de jours.",
  "way.case-or-other-room":
    "Le montrer dans une vitrine climatisée ou une autre salle, ou choisir une autre saison.",
  "way.measure-passage": "Faire mesurer le passage, l’ouverture libre avec le battant ouvert.",
  "way.measure-slope":
    "Mesurer la pente de la rampe avec le transporteur, et la faire indiquer avec l’accès du lieu.",
  "way.more-hands": "Convenir avec le transporteur de plus de bras ou d’un treuil.",
  "way.measure-specimen": "Le mesurer et le peser.",
  "way.other-way-in": "Trouver un autre accès, ou choisir un autre spécimen.",
  "way.site-visit": "Voir sur place avant que la caisse soit construite.",
  "way.design-crate": "Faire concevoir la caisse à la main, et la faire éprouver.",
  "way.wider-base": "La poser sur une base plus large.",
  "way.state-cost": "Faire indiquer le coût de remplacement.",
  "way.state-cover": "Dire quelle couverture il y aura.",
  "way.raise-cover": "Augmenter la couverture.",
  "way.one-currency": "Indiquer la couverture dans la monnaie des coûts de remplacement.",
};
