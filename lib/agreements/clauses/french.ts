/**
 * The clauses in French. Each says who does what, by when, and what follows
 * otherwise. Texts that touch law name the kind of instrument and leave the answer
 * to the local authority. A house draft in plain words, and no legal advice.
 */
import { frenchWords } from "#lib/agreements/clauses/french-words.ts";
import type { ClauseLanguage } from "#lib/agreements/clauses/language.ts";

export const french: ClauseLanguage = {
  locale: "fr-FR",
  firstOfMonth: "1er",
  clauses: {
    parties: {
      heading: "Parties et signataires",
      text: "Le prêteur est {lender}, {lenderAddress} (registre\u00A0: {lenderRegister})\u00A0; signe pour lui\u00A0: {lenderSigner}\u00A0; joignable à toute heure\u00A0: {lenderEmergency}. L’emprunteur est {borrower}, {borrowerAddress} (registre\u00A0: {borrowerRegister})\u00A0; signe pour lui\u00A0: {borrowerSigner}\u00A0; joignable à toute heure\u00A0: {borrowerEmergency}. Contact pour ce prêt\u00A0: {contact}. Chaque partie répond des pouvoirs de qui signe pour elle et annonce à l’autre, le jour même, tout changement de personne ou de numéro\u00A0; jusque-là, ce qui est envoyé à l’ancien est réputé reçu.",
    },
    precedence: {
      heading: "De quoi se compose le contrat",
      text: "Le contrat se compose des conditions de la décision, des présentes clauses, de la liste des spécimens et des annexes. En cas de divergence, {precedence}. Si une version est en deux langues, le texte qui fait foi est celui en {rulingLanguage}. Ce qui est dit hors du contrat ne lie aucune partie tant que les deux ne l’ont pas signé comme avenant.",
    },
    specimens: {
      heading: "Spécimens",
      text: "Le prêteur prête {specimenCount|spécimen|spécimens} avec {componentCount|élément|éléments}, nommés un à un à l’annexe A par numéro d’inventaire, dimensions, masse, image et dernier constat. Les deux parties comptent spécimens, coupes et éléments à chaque remise. Qui en constate l’absence le dit avant de signer le reçu\u00A0; à défaut, le nombre du reçu vaut.",
    },
    ownership: {
      heading: "Propriété",
      text: "La propriété reste où elle est\u00A0; seule la garde change, et seulement pour la durée du prêt. L’emprunteur ne vend, ne gage, ne retient ni ne prête un spécimen à un tiers, et avertit aussitôt le prêteur si un créancier ou une autorité veut s’en saisir. Un acte contraire est sans effet envers le prêteur et lui permet de rappeler le prêt aussitôt.",
    },
    "human-material": {
      heading: "Matériel humain",
      text: "Les spécimens humains viennent de personnes. Ils ne sont ni marchandises ni déchets, et aucun assureur ou transporteur n’acquiert de droit sur eux. Pendant tout le prêt, l’emprunteur les traite avec respect, y veille chez les autres et emploie ces mots dans tous les textes et propos\u00A0: {wordsToUse}. Il évite\u00A0: {wordsToAvoid}. Un texte contraire est retiré à la demande du prêteur\u00A0; sinon la clause 14 s’applique.",
    },
    purpose: {
      heading: "But",
      text: "L’emprunteur n’utilise les spécimens que pour ce but\u00A0: {purpose}\u00A0; sous le titre «\u00A0{title}\u00A0», pour {audience}, {admission} ({priceClass}), manière de montrer\u00A0: {style}. Un autre usage, un autre public ou un autre prix demande au préalable l’accord écrit du prêteur. Un usage sans cet accord cesse aussitôt, et le prêteur peut rappeler les spécimens.",
    },
    consent: {
      heading: "Ce que les donneurs ont permis",
      text: "Le prêteur déclare, d’après ses dossiers, que le but reste dans ce que les donneurs ont permis\u00A0; les limites propres à chaque spécimen figurent à l’annexe H. Pays\u00A0: {consentCountries}. Dernier jour du consentement\u00A0: {consentEndsOn}. L’emprunteur respecte ces limites et répond de son usage. Il peut consulter les preuves, sans noms, à cet endroit\u00A0: {evidencePlace}, avec un préavis de {evidenceNoticeDays|jour|jours}. Un usage au-delà cesse aussitôt et est annoncé le jour même. Si une loi sur les tissus humains ou sur la sépulture demande davantage sur place\u00A0: à vérifier auprès de l’autorité locale.",
    },
    withdrawal: {
      heading: "Retrait du consentement et nouvelles demandes",
      text: "Si un consentement est retiré, ou si une famille, une communauté ou une autorité fait valoir un droit, la partie qui l’apprend le dit aussitôt à l’autre. L’emprunteur retire le spécimen de la vue et de l’usage dans un délai de {stopDisplayHours|heure|heures}, le garde en sûreté et le tient prêt à l’enlèvement dans un délai de {withdrawalReturnDays|jour|jours}. Frais\u00A0: {withdrawalCosts}. Aucune partie ne demande réparation pour la fin anticipée. Si l’emprunteur n’agit pas à temps, le prêteur peut retirer lui-même le spécimen.",
    },
    anonymity: {
      heading: "Anonymat des donneurs",
      text: "Personne du côté de l’emprunteur ne cherche à savoir qui était un donneur, ne publie ce qui pourrait le révéler ni ne prend de vue rapprochée d’un visage ou d’une marque de la peau. Qui croit avoir reconnu une personne ne le dit, le jour même, qu’ici\u00A0: {anonymityContact}. Ce qui a été publié contre cette clause est retiré aussitôt, et le prêteur peut rappeler le spécimen.",
    },
    licences: {
      heading: "Autorisations de l’emprunteur",
      text: "Si le lieu exige une autorisation pour garder, enseigner ou montrer du matériel humain, l’emprunteur la détient pour {venue} pendant toute la durée du prêt et nomme comme personne responsable\u00A0: {responsiblePerson}. Autorisations déclarées\u00A0: {licencesHeld}. Il en envoie copie avant {licenceProofBy} et avertit dans la journée si l’une expire\u00A0; sans autorisation valable, les spécimens sont retirés de la vue et rien ne quitte le prêteur. Quelle autorisation demande une loi sur l’anatomie ou les tissus humains\u00A0: à vérifier auprès de l’autorité locale.",
    },
    term: {
      heading: "Durée",
      text: "Le prêt commence à la livraison le {startsOn} et finit quand les spécimens ont quitté le lieu, au plus tard le {returnBy}. Ouverture ou premier jour d’usage\u00A0: {opensOn}. Le prêteur livre dans les {deliveryWindowDays|jour|jours} qui précèdent\u00A0; l’emprunteur tient les spécimens prêts à l’enlèvement dans les {collectionDays|jour|jours} qui suivent le dernier jour d’usage. Le prêteur réserve {daysBefore|jour|jours} avant et {daysAfter|jour|jours} après pour constats, emballage, route et repos. Après {graceDays|jour|jours} de grâce, un retour tardif est un manquement, et l’emprunteur en supporte le coût.",
    },
    venue: {
      heading: "Lieu et salles",
      text: "Les spécimens restent ici\u00A0: {venue}, {venueAddress}, dans ces salles\u00A0: {rooms}. L’emprunteur demande {moveConsentDays|jour|jours} avant tout changement de salle ou de bâtiment\u00A0; hors danger immédiat, il ne déplace rien avant l’accord écrit du prêteur. Après un déplacement sans accord, les spécimens regagnent leur salle ou, si le prêteur le demande, la maison.",
    },
    extension: {
      heading: "Prolongation",
      text: "L’emprunteur demande une prolongation par écrit au moins {extensionRequestDays|jour|jours} avant la fin. Le prêteur vérifie à nouveau couverture, consentement, autorisations, état, lumière reçue et réservation suivante, et répond dans un délai de {extensionAnswerDays|jour|jours}. Sans oui écrit, le prêt finit comme convenu. Aucun prêt ne dure plus de {loanMaxMonths|mois|mois} en tout.",
    },
    recall: {
      heading: "Rappel et retour anticipé",
      text: "Le prêteur peut rappeler un spécimen aussitôt si un terme est enfreint, s’il est en danger ou si une autorité le demande\u00A0; l’emprunteur le tient alors prêt dans un délai de {recallAtOnceDays|jour|jours}. Pour son propre besoin, le prêteur rappelle avec un préavis de {recallDays|jour|jours}\u00A0; les frais sont supportés par\u00A0: {recallCosts}. L’emprunteur peut rendre plus tôt avec le même préavis, à ses frais. Si un spécimen n’est pas prêt à temps, le prêteur peut venir le chercher aux frais de l’emprunteur. Rien ne ferme jamais le chemin du retour.",
    },
    costs: {
      heading: "Frais",
      text: "Supportent les frais de préparation et de constat\u00A0: {costOfPreparation}\u00A0; d’emballage et de caisses\u00A0: {costOfPacking}\u00A0; de transport aller et retour\u00A0: {costOfTransport}\u00A0; de couverture\u00A0: {costOfCover}\u00A0; de permis et de douane\u00A0: {costOfPermits}\u00A0; de convoyage\u00A0: {costOfCourier}\u00A0; de montage et de démontage\u00A0: {costOfDisplay}. Les frais sont exprimés en {currency}, convenus par écrit avant de naître, énumérés à l’annexe I et payés dans un délai de {paymentDays|jour|jours} après la facture. Un impayé permet au prêteur de retenir le départ, jamais le retour.",
    },
    fee: {
      heading: "Redevance",
      text: "Montants convenus\u00A0: {fee}, en {feeInstalments|versement|versements}, le dernier payé {feeDays|jour|jours} avant le départ. Pour le matériel humain, tout montant ne fait que couvrir des frais\u00A0; rien n’est payé pour les restes eux-mêmes, et l’emprunteur n’en tire aucun profit au-delà de ses propres frais. Sans paiement à temps, le départ attend.",
    },
    "replacement-cost": {
      heading: "Coût de remplacement pour la couverture",
      text: "L’annexe A indique pour chaque spécimen ce que coûterait sa préparation ou son remplacement. Somme des lignes\u00A0: {coverNeeded} ({coverSum}). C’est une base de couverture, qui ne dit rien d’un prix. Le prêteur la revoit si le prêt dure plus de {revaluationMonths|mois|mois}, et l’emprunteur adapte la couverture dans le mois qui suit l’avis\u00A0; jusque-là, il répond de la différence.",
    },
    cover: {
      heading: "Couverture",
      text: "Genre de couverture\u00A0: {coverKind}. Elle vaut contre tous les risques, du moment où un spécimen quitte sa place jusqu’à ce qu’il y soit revenu, route et séjour compris, au moins pour le coût de remplacement, en\u00A0: {coverCountries}. Franchise d’au plus {deductible} {currency}, à la charge de l’emprunteur. Exclusions admises au plus\u00A0: {coverExclusions}. Bénéficiaire d’une indemnité\u00A0: {lossPayee}. Recours contre l’autre partie\u00A0: {subrogation}. Le prêteur détient l’attestation {certificateDays|jour|jours} avant le départ\u00A0; sans elle, ou pour une heure non couverte, rien ne part.",
    },
    care: {
      heading: "Soin et responsabilité",
      text: "De la réception à la reprise des caisses par le transporteur, l’emprunteur soigne les spécimens comme le meilleur de ce qu’il possède et répond de toute perte et de tout dommage, quel qu’en soit l’auteur, {liabilityCap}. Il ne répond ni d’une faute du prêteur ni d’un défaut caché. La partie qu’une force majeure empêche le dit à l’autre dans un délai de {forceMajeureHours|heure|heures} et fait pour les spécimens ce qu’elle peut\u00A0; sinon elle ne peut s’en prévaloir.",
    },
    "total-loss": {
      heading: "Si un spécimen humain est détruit",
      text: "Ce qui reste d’un spécimen humain revient au prêteur dans un délai de {remainsDays|jour|jours} après l’examen de la cause. Ce n’est pas un sauvetage d’assurance\u00A0: aucun assureur ne le prend, nul ne le vend, et seul le prêteur décide d’une inhumation ou d’une crémation. L’emprunteur l’inscrit dans sa couverture\u00A0; sinon il supporte ce que coûte le retour des restes.",
    },
    condition: {
      heading: "Constats d’état",
      text: "Chaque spécimen est examiné quatre fois\u00A0: avant le départ, après le déballage sur place, avant l’emballage du retour et à la maison. Le constat sur place est fait et envoyé dans un délai de {checkHours|heure|heures} après l’ouverture de la caisse, avec au moins {photographCount|image|images} de chaque spécimen, daté et signé par les deux parties ou leurs convoyeurs. Qui ne dit rien contre un constat dans un délai de {silenceHours|heure|heures} après l’avoir reçu l’accepte. Un changement qu’aucun constat de l’emprunteur ne nomme est réputé survenu sous sa garde. Les constats forment l’annexe B.",
    },
    "no-alteration": {
      heading: "Rien n’est modifié",
      text: "Sans accord écrit, l’emprunteur ne nettoie, ne traite, ne moule, ne numérise, ne démonte, ne remonte ni ne change la pose d’un spécimen. Permis pour tous les spécimens de ce prêt\u00A0: {activities}\u00A0; l’autorisation écrite dit quoi et comment. Le prêteur répond à une demande dans un délai de {alterationAnswerDays|jour|jours}\u00A0; le silence vaut refus. Ce qui préserve un spécimen d’un dommage immédiat peut être fait et est annoncé dans un délai de {stabilisingHours|heure|heures}. Sinon l’emprunteur supporte la remise en état, et le prêteur peut rappeler.",
    },
    sampling: {
      heading: "Prélèvements et analyses génétiques",
      text: "{samplingAllowed} Autorisation\u00A0: {samplePermit}. Aucune analyse génétique n’est faite sur du matériel humain. Les résultats et les restes d’un prélèvement vont au prêteur dans un délai de {resultDays|jour|jours}. Un prélèvement fait autrement est remis aussitôt, ses données sont effacées, et le prêteur peut rappeler. Si une loi sur les tissus humains ou les tests génétiques demande davantage\u00A0: à vérifier auprès de l’autorité locale.",
    },
    environment: {
      heading: "Air et lumière",
      text: "Tant que les spécimens sont chez lui, l’emprunteur maintient, pour tous ensemble, {temperatureLowC}–{temperatureHighC} °C avec au plus {temperatureChangeK} K de variation en 24 heures, {humidityLowPercent}–{humidityHighPercent}\u00A0% d’humidité relative avec au plus {humidityChangePercent}\u00A0% de variation en 24 heures, au plus {illuminanceLx} lx, {lightLxHours} lx·h par an et {uvMicrowattPerLumen} µW/lm d’ultraviolet\u00A0; l’annexe D donne les limites de chaque groupe. Air\u00A0: {pollutants}. Chocs\u00A0: {vibration}. Il enregistre au moins toutes les {loggingMinutes|minute|minutes} et envoie le relevé tous les {environmentReportDays|jour|jours}. Il avertit dans un délai de {excursionHours|heure|heures} si une limite est dépassée ou si le relevé présente une lacune de plus de {gapHours|heure|heures}. Si les limites ne sont pas rétablies au jour convenu, les spécimens quittent la vue, et le prêteur peut rappeler.",
    },
    display: {
      heading: "Présentation",
      text: "Chaque spécimen est placé comme le prêteur l’a approuvé, avec cette protection\u00A0: {protection}, à une distance d’au moins {barrierMm} mm, sur un support que le prêteur accepte et un sol qui porte le plus lourd, de {heaviestKg} kg, loin du jour, de la chaleur et des courants d’air. Les spécimens humains ont {restrictedRoom} et, {noticePlace}, un avis qui dit qu’ils viennent de donneurs, demande le respect et conseille un âge d’au moins {minimumAge|an|ans}. L’emprunteur envoie plan et supports {displayApprovalDays|jour|jours} avant l’ouverture. Ce qui n’est pas approuvé n’ouvre pas, ou est changé avant de rester ouvert.",
    },
    handling: {
      heading: "Manipulation",
      text: "Seules des personnes formées depuis moins de {trainingMonths|mois|mois} soulèvent, tournent ou déballent un spécimen\u00A0: au moins {handlersLeast|personne|personnes}, protection des mains\u00A0: {gloves}, aux points de levage de l’annexe J. L’emprunteur tient le registre de formation et le montre sur demande. Sans personnes formées, la caisse reste fermée jusqu’à ce que le prêteur en envoie aux frais de l’emprunteur.",
    },
    teaching: {
      heading: "Usage dans l’enseignement",
      text: "Dans l’enseignement, {teachingUse}. Est présent dès que des apprenants sont auprès d’un spécimen\u00A0: {supervisor}, ou un enseignant nommé par écrit\u00A0; au plus {groupMost|apprenant|apprenants} à la fois, assis là où l’on manipule. Aucun apprenant n’est seul avec un spécimen, aucun spécimen ne quitte la salle, et chaque jour d’usage figure dans une liste que le prêteur reçoit à la fin. Une séance contraire est arrêtée\u00A0; après une deuxième, le prêteur peut rappeler.",
    },
    security: {
      heading: "Sûreté et incendie",
      text: "Jour et nuit, l’emprunteur tient les salles fermées à clé quand nul n’en a la charge, fait détecter le feu, garde à portée des extincteurs qui ne nuisent pas aux spécimens et protège l’accès par une alarme. La nuit\u00A0: {nightWatch}. Au plus {keyHoldersMost|personne détient|personnes détiennent} des clés, chacune inscrite dans une liste. Une panne est couverte par un garde dans l’heure et annoncée au prêteur le jour même\u00A0; sinon les spécimens vont dans une réserve fermée.",
    },
    jars: {
      heading: "Bocaux à liquide",
      text: "Les bocaux contiennent\u00A0: {fluids}. L’emprunteur les garde debout et fermés, au-dessus d’un bac pour {trayPercent}\u00A0% de leur liquide, dans une salle ventilée sans flamme ni étincelle, avec la fiche de données de sécurité, des gants, un absorbant et un récipient qui ferme. Il regarde niveau, couleur et joint tous les {jarCheckDays|jour|jours} et avertit le prêteur le jour même si un niveau baisse. Un bocal qui fuit va aussitôt dans le récipient, et nul ne complète sans l’accord du prêteur.",
    },
    packing: {
      heading: "Emballage",
      text: "Emballe pour le retour\u00A0: {packer}\u00A0; dans les caisses du prêteur, avec les mêmes matériaux et dans l’ordre de l’annexe F. Les caisses vides restent fermées, complètes et propres à {crateLowC}–{crateHighC} °C et {crateHumidityLowPercent}–{crateHumidityHighPercent}\u00A0% d’humidité relative, ensemble et sans nuisibles. Ce qui manque est annoncé dans la journée et remplacé avant l’emballage aux frais de qui en avait la garde\u00A0; rien ne voyage autrement emballé sans l’accord du prêteur.",
    },
    transport: {
      heading: "Transport",
      text: "Transporteurs\u00A0: {carriers}. Les spécimens voyagent ainsi\u00A0: {transportMode}, dans un véhicule à suspension pneumatique et à espace de charge régulé, dont la température est enregistrée, avec au moins {driversLeast|conducteur|conducteurs}, fermés à clé ou gardés à tout moment. Changement de véhicule\u00A0: {transshipment}. L’emprunteur propose transporteur et itinéraire {transportApprovalDays|jour|jours} avant le départ\u00A0; le prêteur les approuve par écrit, et l’annexe E les fixe. Sans approbation, rien n’est remis, et un transporteur qui s’écarte de l’itinéraire est arrêté au prochain lieu sûr.",
    },
    courier: {
      heading: "Convoyage",
      text: "Convoyeur du prêteur\u00A0: {courier}. Il peut arrêter chargement, déballage et mise en place jusqu’à ce qu’un danger soit écarté, et signe les constats pour le prêteur. S’il voyage, il est prévu\u00A0: {courierClass}, {courierNights|nuit|nuits} et {courierPerDay} {currency} par jour\u00A0; la clause 15 dit à la charge de qui. Les parties se demandent d’abord si le voyage est nécessaire. Une caisse à laquelle il doit assister reste fermée jusqu’à sa présence, sur place ou par vidéo.",
    },
    border: {
      heading: "Douane et permis",
      text: "Les spécimens vont pour un temps de ce pays\u00A0: {borderFrom}, vers celui-ci\u00A0: {borderTo}, et reviennent. Importateur\u00A0: {importer}. Base\u00A0: {customsBasis}. Chaque partie obtient les papiers de son pays {permitDays|jour|jours} avant le départ et en donne les numéros à l’autre\u00A0; l’importateur montre dans un délai de {dischargeDays|jour|jours} après le retour que le séjour temporaire est apuré. Sans un papier, rien ne part\u00A0; les droits d’un séjour non apuré sont à la charge de l’importateur. Quels instruments de douane, de santé ou de biens culturels s’appliquent\u00A0: à vérifier auprès de l’autorité locale.",
    },
    immunity: {
      heading: "Insaisissabilité et garantie de retour",
      text: "Loi d’insaisissabilité ou promesse de retour d’un État\u00A0: {immunity}. Là où elle est demandée, l’emprunteur dépose la demande {immunityMonths|mois|mois} avant le départ et envoie aussitôt la réponse. En cas de refus, le prêteur peut retenir les spécimens sans frais pour lui. Si un tel instrument existe et ce qu’il protège\u00A0: à vérifier auprès de l’autorité locale.",
    },
    receipt: {
      heading: "Réception et repos",
      text: "À l’arrivée, l’emprunteur compte les caisses, regarde scellés et dehors, et confirme la réception dans un délai de {receiptHours|heure|heures}, avec remarques et images de tout ce qui est inhabituel. Les caisses reposent fermées dans la salle au moins {restHours|heure|heures}, et jusqu’au moment que le programme indique s’il est plus tardif. Après l’ouverture, spécimens et éléments sont comptés et un second reçu est signé. Une caisse ouverte trop tôt est annoncée au prêteur, et l’emprunteur répond de ce que l’humidité y a fait.",
    },
    access: {
      heading: "Suivi et accès",
      text: "Le prêteur peut voir les spécimens, les salles et les relevés avec un préavis de {inspectionDays|jour|jours}, et aussitôt en cas de danger. L’emprunteur envoie les relevés d’air et de lumière dans un délai de {recordHours|heure|heures} après la demande et annonce à temps travaux, événements et changements de personnel près des spécimens. Si l’accès est refusé, le prêteur peut rappeler aussitôt.",
    },
    incident: {
      heading: "Incidents",
      text: "S’il se passe quelque chose, l’emprunteur met en sûreté les personnes et le spécimen, ne répare rien, garde toutes les parties et tous les relevés, prend des images pour le prêteur et appelle aussitôt\u00A0: {lenderEmergency}. Il écrit dans un délai de {incidentDays|jour ouvrable|jours ouvrables} et fait un rapport complet dans un délai de {incidentReportDays|jour ouvrable|jours ouvrables}\u00A0: quand, où, qui, quoi, l’état d’avant, les mesures, qui a été averti. Il aide à la demande auprès de l’assureur. Ce qui n’est pas annoncé à temps est réputé survenu sous sa garde et par sa faute.",
    },
    emergency: {
      heading: "Urgences",
      text: "L’emprunteur a un plan écrit pour feu, eau, vol et troubles, y inscrit les spécimens et envoie la page qui les concerne {emergencyPlanDays|jour|jours} avant la livraison. Ordre de sauvetage\u00A0: {salvageOrder}. Les personnes passent d’abord. L’annexe J se trouve auprès des spécimens. Sans plan, les spécimens restent dans leurs caisses jusqu’à ce qu’il y en ait un.",
    },
    pictures: {
      heading: "Images, film et numérisation",
      text: "Permis\u00A0: {pictures}. Images prises par les visiteurs\u00A0: {visitorPictures}\u00A0; l’emprunteur pose un avis et veille à son respect. Données en trois dimensions\u00A0: {threeDimensional}. Pour tout le reste, l’emprunteur demande par écrit, et le prêteur répond dans un délai de {pictureAnswerDays|jour|jours}\u00A0; le silence vaut refus. Les images de spécimens humains sont traitées comme les spécimens eux-mêmes. Ce qui a été fait sans accord est remis et retiré aussitôt.",
    },
    credit: {
      heading: "Mention et textes",
      text: "Toute présentation et toute publication porte la mention «\u00A0{creditLine}\u00A0». L’emprunteur envoie cartels et textes sur les spécimens humains {labelApprovalDays|jour|jours} avant l’impression ou l’affichage, et le prêteur répond dans la moitié de ce temps. Remerciement aux donneurs, selon l’annexe K\u00A0: {acknowledgement}. Un texte non approuvé est ôté jusqu’à ce qu’il le soit.",
    },
    publications: {
      heading: "Publications et rapports",
      text: "L’emprunteur envoie au prêteur {copies|exemplaire|exemplaires} de chaque publication qui montre un spécimen et, dans un délai de {attendanceDays|jour|jours} après la fin, un bref rapport\u00A0: jours, nombre de visiteurs ou d’apprenants, remarques sur l’état, objections, expériences. Tant que le rapport manque, le prêteur n’est pas tenu d’examiner une autre demande.",
    },
    promotion: {
      heading: "Promotion et produits dérivés",
      text: "Usage de spécimens humains ou de leur image dans la publicité, sur des produits ou comme décor\u00A0: {promotion}. L’emprunteur y engage aussi ses mécènes et partenaires. Ce qui paraît contre cette clause est retiré dans la journée aux frais de l’emprunteur\u00A0; sinon le prêteur peut rappeler.",
    },
    objections: {
      heading: "Plaintes et demandes de communautés",
      text: "Une objection à la présentation d’un spécimen humain, ou la demande de le retirer, est reçue avec respect, reçoit une réponse et est dite au prêteur dans un délai de {objectionHours|heure|heures}. Les parties en décident ensemble dans un délai de {objectionReviewDays|jour|jours}\u00A0; d’ici là, l’emprunteur retire le spécimen de la vue si une famille ou une communauté d’origine le demande. À défaut d’accord, le prêteur décide.",
    },
    confidentiality: {
      heading: "Confidentialité et protection des données",
      text: "Rapports sur le bâtiment, coûts de remplacement, itinéraires, contacts et ce qui est connu des donneurs ne servent qu’à ce prêt, ne sont montrés qu’à qui en a besoin et sont effacés {retentionMonths|mois|mois} après la fin, sauf ce qui doit être conservé. Une perte ou une fuite est annoncée dans un délai de {breachHours|heure|heures} à\u00A0: {dataContact}. Qui transmet des données autrement supporte le dommage. Ce que demande une loi sur la protection des données, pour les vivants et pour les morts\u00A0: à vérifier auprès de l’autorité locale.",
    },
    cancellation: {
      heading: "Annulation",
      text: "Chaque partie peut annuler par écrit jusqu’au départ. L’emprunteur qui annule paie les frais nés et convenus\u00A0; s’ils sont moindres, au moins {cancelEarlyPercent}\u00A0% des montants convenus à partir de {cancelEarlyDays|jour|jours} avant le départ et {cancelLatePercent}\u00A0% à partir de {cancelLateDays|jour|jours} avant. Le prêteur qui annule supporte ses propres frais. Rien n’est dû si la cause est le consentement, une autorité ou une force majeure.",
    },
    breach: {
      heading: "Manquement, fin et insolvabilité",
      text: "La partie qui enfreint un terme y remédie dans un délai de {cureDays|jour|jours} après la demande. Sinon, ou si l’emprunteur ne peut plus payer, l’autre peut mettre fin au contrat\u00A0; le prêteur peut alors, après avis, entrer sur place, reprendre les spécimens et traiter directement avec les transporteurs. L’emprunteur garantit le coût du retour avant le départ par un dépôt de {deposit} {currency}, que le prêteur rend quand le dernier spécimen est rentré et contrôlé. En cas d’insolvabilité, les spécimens n’entrent pas dans la masse.",
    },
    changes: {
      heading: "Substitution et avenants",
      text: "Un changement, y compris un spécimen ajouté ou échangé, est un avenant numéroté\u00A0: une nouvelle version des termes qui nomme la version qu’elle modifie et ce qui diffère. Les deux parties le signent dans un délai de {amendmentDays|jour|jours}\u00A0; jusque-là vaut la dernière version signée par les deux. Ce qui est fait sur la foi d’un changement non signé l’est aux risques de qui le fait.",
    },
    law: {
      heading: "Droit, lieu et litiges",
      text: "Le droit de ce pays s’applique, autant que les parties peuvent le choisir\u00A0: {lawCountry}. Elles se parlent pendant {negotiationDays|jour|jours} à compter du jour où l’une d’elles nomme un litige. Ensuite\u00A0: {disputePath}\u00A0; lieu\u00A0: {court}. Le texte qui fait foi est celui en {rulingLanguage}. Un litige ne retarde jamais le retour. Si une règle impérative d’un autre lieu passe avant\u00A0: à vérifier auprès de l’autorité locale.",
    },
    signature: {
      heading: "Forme de la signature",
      text: "Les deux parties signent {signatureForm}, en {counterparts|exemplaire|exemplaires}, au moins {signedDays|jour|jours} avant le départ. Une signature contient nom, fonction, heure, langue et le SHA-256 des termes\u00A0; une version signée ne change jamais. Une partie dont la maison demande une autre forme le dit avant de signer. Sans les deux signatures, rien ne part. Ce que demande un instrument sur la signature électronique\u00A0: à vérifier auprès de l’autorité locale.",
    },
    disposition: {
      heading: "Spécimens dont le retour est dû",
      text: "Certains spécimens sont dus à l’inhumation, à la crémation, à une famille ou à une communauté\u00A0; le premier de ces jours est le {dispositionDueOn}. L’emprunteur les a mis sur le chemin du retour au moins {dispositionMarginDays|jour|jours} avant\u00A0; accomplit ce qui a été promis\u00A0: {dispositionBy}. Aucune prolongation ne va au-delà. S’ils tardent, le prêteur vient les chercher aussitôt aux frais de l’emprunteur. Ce que demande une loi sur la sépulture ou l’anatomie\u00A0: à vérifier auprès de l’autorité locale.",
    },
    animals: {
      heading: "Matériel animal",
      text: "Le prêteur indique ces papiers de protection des espèces, de contrôle vétérinaire et de collecte\u00A0: {animalPapers}. L’emprunteur obtient ce que demande son pays, envoie des copies {animalPaperDays|jour|jours} avant le départ, garde le tout auprès des spécimens et le montre sur demande. À défaut, les spécimens animaux restent où ils sont. Ce que demandent la convention sur le commerce des espèces menacées et les lois sur les espèces, le contrôle vétérinaire et la chasse\u00A0: à vérifier auprès de l’autorité locale.",
    },
    sustainability: {
      heading: "Durabilité",
      text: "Pour l’air, le transport et les caisses, les parties choisissent la voie qui pèse le moins sur l’environnement et garde pourtant les spécimens en sûreté\u00A0: {crateReuse}, charges partagées, convoyage par vidéo là où il suffit, plages d’air larges là où l’annexe D les permet. L’emprunteur propose ses choix {sustainabilityDays|jour|jours} avant l’emballage. À défaut d’accord, la sûreté des spécimens décide.",
    },
  },
  ...frenchWords,
};
