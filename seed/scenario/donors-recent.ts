/** Donors who died in 2015 and later. Every name is invented; keys stand only in the seed. */
import {
  consent,
  donor,
  file,
  full,
  noPictures,
  notForMoney,
  notHandled,
  person,
  type ScenarioDonor,
  teachingOnly,
} from "#seed/scenario/consent-forms.ts";

export const recentDonors = {
  alder: donor(
    "female",
    "60–69",
    "2017-09",
    consent(full, { signedOn: "2009-03-17", evidencePlace: file(41), verified: -1_360 }),
    person("Ragna Solvike", "1948-06-02", "2017-09-11", "Niece, address in the file", file(41)),
  ),
  ash: donor(
    "male",
    "80–89",
    "2019-04",
    consent(notHandled, { signedOn: "2011-10-04", evidencePlace: file(58) }),
    person("Aldous Merriwick", "1936-01-21", "2019-04-30", "Son and daughter", file(58)),
  ),
  /** May only go to countries on a list. */
  aspen: donor(
    "female",
    "70–79",
    "2020-02",
    consent(full, {
      signedOn: "2012-05-22",
      evidencePlace: file(63),
      territoriesAllowed: ["FI", "SE", "DK", "IE", "NL", "GB"],
    }),
    person("Thyra Vannesund", "1947-11-08", "2020-02-17", "None known", file(63)),
  ),
  broom: donor(
    "male",
    "60–69",
    "2019-10",
    consent(full, { signedOn: "2013-11-19", evidencePlace: file(75) }),
    person("Lauri Hakkemar", "1954-04-06", "2019-10-21", "Wife and three children", file(75)),
  ),
  cedar: donor(
    "male",
    "70–79",
    "2015-08",
    consent(full, { signedOn: "2008-04-18", evidencePlace: file(26) }),
    person("Ebbe Thorsmark", "1942-03-30", "2015-08-22", "Widow until 2021", file(26)),
  ),
  cherry: donor(
    "female",
    "60–69",
    "2020-04",
    consent(full, {
      signedOn: "2013-02-05",
      evidencePlace: file(70),
      territoriesAllowed: ["FI", "SE", "DK"],
    }),
  ),
  fern: donor(
    "female",
    "50–59",
    "2018-01",
    consent(notForMoney, { signedOn: "2011-05-03", evidencePlace: file(56) }),
    person("Paula Merenkall", "1960-08-13", "2018-01-02", "Mother and brother", file(56)),
  ),
  /** Withdrawn by the family under the terms of the form, while a specimen was out. */
  fir: donor(
    "female",
    "40–49",
    "2015-10",
    consent(teachingOnly, {
      signedOn: "2008-06-20",
      evidencePlace: file(33),
      withdrawn: { received: -75, effective: -60 },
    }),
    person("Oda Landemoor", "1968-12-01", "2015-10-26", "Daughter, wrote in about the consent", file(33)),
  ),
  hawthorn: donor(
    "male",
    "60–69",
    "2019-02",
    consent(full, { signedOn: "2014-01-15", evidencePlace: file(76) }),
  ),
  hazel: donor(
    "female",
    "60–69",
    "2017-07",
    consent(full, { signedOn: "2010-08-09", evidencePlace: file(51), identifiable: true }),
    person("Signe Halvorsby", "1955-02-14", "2017-07-08", "Brother", file(51)),
  ),
  heather: donor(
    "female",
    "50–59",
    "2017-02",
    consent(full, { signedOn: "2010-10-27", evidencePlace: file(53) }),
    person("Marit Oderfell", "1959-03-03", "2017-02-19", "Husband", file(53)),
  ),
  /** Owed back to the family in the coming year. */
  larch: donor(
    "male",
    "70–79",
    "2019-01",
    consent(full, {
      signedOn: "2012-09-25",
      evidencePlace: file(66),
      disposition: "return to family",
      dispositionDue: 205,
    }),
    person("Emrys Corrandale", "1946-08-19", "2019-01-12", "Wife, asks for the ashes", file(66)),
  ),
  linden: donor(
    "male",
    "60–69",
    "2015-09",
    consent(full, { signedOn: "2008-12-08", evidencePlace: file(40) }),
    person("Jory Penhallick", "1949-10-10", "2015-09-24", "None known", file(40)),
  ),
  maple: donor(
    "female",
    "70–79",
    "2020-09",
    consent(full, { signedOn: "2014-07-11", evidencePlace: file(78) }),
    person("Jacoba Terlinde", "1949-05-25", "2020-09-29", "Partner", file(78)),
  ),
  oak: donor(
    "male",
    "70–79",
    "2016-04",
    consent(full, { signedOn: "2009-02-27", evidencePlace: file(39) }),
    person("Halvard Nessing", "1945-01-12", "2016-04-04", "Two sons", file(39)),
  ),
  osier: donor(
    "male",
    "60–69",
    "2020-05",
    consent(full, { signedOn: "2014-03-04", evidencePlace: file(77) }),
    person("Rasmus Ekenfeld", "1953-09-02", "2020-05-28", "Wife", file(77)),
  ),
  plum: donor(
    "female",
    "70–79",
    "2017-07",
    consent(noPictures, { signedOn: "2011-03-30", evidencePlace: file(55) }),
    person("Linnea Furuholt", "1945-09-17", "2017-07-20", "Foster daughter", file(55)),
  ),
  reed: donor(
    "female",
    "80–89",
    "2016-04",
    consent(notForMoney, { signedOn: "2009-09-16", evidencePlace: file(44) }),
  ),
  rowan: donor(
    "female",
    "80–89",
    "2015-01",
    consent(full, { signedOn: "2008-11-21", evidencePlace: file(38) }),
    person("Isolde Brackenrow", "1932-12-24", "2015-01-04", "Sister and nephew", file(38)),
  ),
  sage: donor(
    "male",
    "70–79",
    "2018-08",
    consent(noPictures, { signedOn: "2012-02-14", evidencePlace: file(61), identifiable: true }),
    person("Clement Ashdowner", "1944-01-30", "2018-08-25", "Two nephews", file(61)),
  ),
  /** Review of the consent is overdue. */
  sorrel: donor(
    "female",
    "70–79",
    "2018-10",
    consent(full, { signedOn: "2013-06-06", evidencePlace: file(73), reviewDue: -15 }),
  ),
  spruce: donor(
    "male",
    "60–69",
    "2016-01",
    consent(teachingOnly, { signedOn: "2010-04-13", evidencePlace: file(49) }),
    person("Anders Klippevik", "1947-02-02", "2016-01-30", "None known", file(49)),
  ),
  /** For professionals' eyes only. */
  willow: donor(
    "female",
    "60–69",
    "2019-01",
    consent(notForMoney, {
      signedOn: "2012-01-10",
      evidencePlace: file(60),
      audience: "professionals only",
    }),
  ),
} satisfies Record<string, ScenarioDonor>;
