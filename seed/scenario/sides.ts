/**
 * On which side unpaired structures lie. A name that says left or right is taken at
 * its word; what lies off the median plane without such a name stands in the lists
 * here; everything else is median. A structure that crosses the median plane without
 * being symmetrical to it, or wanders, has no side.
 */
import type { Shown } from "#lib/specimens/schema.ts";

const idsOf = (text: string) => text.trim().split(/\s+/);

const onTheLeft = new Set(
  idsOf(`
  accessory-spleen anterior-interventricular-branch circumflex-branch-of-left-coronary-artery descending-colon
  duodenojejunal-flexure lateral-branch-of-anterior-interventricular-artery ligamentum-arteriosum lingular-bronchus
  mitral-valve oesophageal-hiatus short-gastric-arteries spleen splenic-artery splenic-vein tail-of-pancreas
  thoracic-aorta
  dorsal-sac-of-rumen rumen ruminal-atrium ruminal-papillae ruminal-pillars ventral-sac-of-rumen`),
);

const onTheRight = new Set(
  idsOf(`
  appendicular-artery ascending-colon azygos-vein bile-duct brachiocephalic-trunk caecum caval-opening
  common-hepatic-artery common-hepatic-duct crista-terminalis cystic-artery cystic-duct cystohepatic-triangle
  descending-part-of-duodenum gallbladder gastroduodenal-artery ileal-papilla ileocolic-artery inferior-vena-cava
  intermediate-bronchus meso-appendix middle-lobar-bronchus orifice-of-vermiform-appendix proper-hepatic-artery
  retrocaecal-recess septomarginal-trabecula superior-part-of-duodenum superior-vena-cava terminal-ileum
  tricuspid-valve vermiform-appendix
  abomasum omasal-laminae omasum spiral-folds-of-abomasum`),
);

const onNoSide = new Set(
  idsOf(`
  abdominal-aorta abdominal-part-of-oesophagus angular-incisure-of-stomach anterior-interventricular-sulcus aortic-sinuses
  aortic-valve apex-of-heart arch-of-aorta ascending-aorta bare-area-of-liver bifurcation-of-aorta body-of-pancreas
  body-of-stomach cardia-of-stomach caudate-lobe-of-liver coronary-ligament-of-liver coronary-sinus coronary-sulcus
  duodenum endothoracic-fascia falciform-ligament fibrous-pericardium fissure-for-round-ligament-of-liver
  foramen-ovale-of-heart fossa-ovalis-of-heart free-taenia fundus-of-stomach gastric-folds great-cardiac-vein
  greater-omentum head-of-pancreas heart hepatic-portal-vein hepatic-veins horizontal-part-of-duodenum ileum
  inferior-mesenteric-artery interventricular-septum jejunum lesser-curvature-of-stomach liver
  membranous-part-of-interventricular-septum middle-cardiac-vein myocardium opening-of-coronary-sinus pancreas
  pancreatic-duct pectinate-muscles pericardium porta-hepatis posterior-interventricular-branch pulmonary-trunk
  pulmonary-valve pyloric-antrum pyloric-canal pyloric-sphincter pylorus quadrate-lobe-of-liver
  round-ligament-of-liver segments-of-liver sigmoid-colon sinu-atrial-nodal-branch small-cardiac-vein small-intestine
  stomach superior-mesenteric-vein tendinous-cords-of-heart thoracic-duct trabeculae-carneae transverse-colon
  uncinate-process-of-pancreas
  reticular-cells reticular-groove reticulo-omasal-orifice reticulum ruminoreticular-fold`),
);

/** The side of an unpaired structure, as the record of a specimen states it. */
export function sideOfUnpaired(structureId: string): Shown["side"] {
  const words = structureId.split("-");
  if (words.includes("left") || onTheLeft.has(structureId)) return "left";
  if (words.includes("right") || onTheRight.has(structureId)) return "right";
  return onNoSide.has(structureId) ? "not applicable" : "median";
}
