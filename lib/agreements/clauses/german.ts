/**
 * The clauses in German. Each says who does what, by when, and what follows
 * otherwise. Texts that touch law name the kind of instrument and leave the answer
 * to the local authority. A house draft in plain words, and no legal advice.
 */
import { germanWords } from "#lib/agreements/clauses/german-words.ts";
import type { ClauseLanguage } from "#lib/agreements/clauses/language.ts";

export const german: ClauseLanguage = {
  locale: "de-DE",
  clauses: {
    parties: {
      heading: "Parteien und Unterzeichnende",
      text: "Verleiher ist {lender}, {lenderAddress} (Register: {lenderRegister}); es unterzeichnet {lenderSigner}; jederzeit erreichbar unter {lenderEmergency}. Entleiher ist {borrower}, {borrowerAddress} (Register: {borrowerRegister}); es unterzeichnet {borrowerSigner}; jederzeit erreichbar unter {borrowerEmergency}. Kontakt für diese Leihe: {contact}. Jede Partei steht dafür ein, dass bevollmächtigt ist, wer für sie unterzeichnet, und teilt der anderen eine geänderte Person oder Nummer am selben Tag mit; bis dahin gilt als zugegangen, was an die alte gerichtet wird.",
    },
    precedence: {
      heading: "Woraus der Vertrag besteht",
      text: "Der Vertrag besteht aus den Bedingungen der Entscheidung, diesen Klauseln, dem Verzeichnis und den Anlagen. Weichen sie voneinander ab, gilt: {precedence}. Liegt eine Fassung in zwei Sprachen vor, ist der Text in dieser Sprache maßgeblich: {rulingLanguage}. Was außerhalb des Vertrags gesagt wird, bindet keine Partei, bis beide es als Nachtrag unterzeichnet haben.",
    },
    specimens: {
      heading: "Präparate",
      text: "Der Verleiher leiht {specimenCount|Präparat|Präparate} mit {componentCount|Bestandteil|Bestandteilen} aus, in Anlage A einzeln genannt mit Zugangsnummer, Maßen, Masse, Bild und letzter Prüfung. Beide Parteien zählen Präparate, Scheiben und Bestandteile bei jeder Übergabe. Wer eines vermisst, sagt es vor der Unterschrift unter die Empfangsbestätigung; ohne ein solches Wort gilt die bestätigte Zahl.",
    },
    ownership: {
      heading: "Eigentum",
      text: "Das Eigentum bleibt, wo es ist; nur der Gewahrsam wechselt, und nur für die Leihzeit. Der Entleiher verkauft, verpfändet, behält und verleiht kein Präparat weiter und meldet sofort, wenn ein Gläubiger oder eine Behörde nach einem greift. Eine Handlung gegen diese Klausel wirkt nicht gegen den Verleiher und erlaubt ihm den sofortigen Rückruf.",
    },
    "human-material": {
      heading: "Menschliches Material",
      text: "Präparate vom Menschen stammen von Personen. Sie sind weder Ware noch Abfall, und kein Versicherer oder Frachtführer erwirbt einen Anspruch auf sie. Während der ganzen Leihe behandelt der Entleiher sie mit Achtung, hält andere dazu an und verwendet in allen Texten und Gesprächen diese Wörter: {wordsToUse}. Er vermeidet: {wordsToAvoid}. Ein anderer Text wird auf Verlangen des Verleihers zurückgezogen; geschieht das nicht, gilt Klausel 14.",
    },
    purpose: {
      heading: "Zweck",
      text: "Der Entleiher verwendet die Präparate nur für diesen Zweck: {purpose}; unter dem Titel „{title}“, für {audience}, {admission} ({priceClass}), Art des Zeigens: {style}. Ein anderer Gebrauch, ein anderes Publikum oder ein anderer Preis braucht vorher die schriftliche Zustimmung des Verleihers. Ein Gebrauch ohne sie endet sofort, und der Verleiher kann die Präparate zurückrufen.",
    },
    consent: {
      heading: "Was die Körperspenderinnen und Körperspender erlaubt haben",
      text: "Der Verleiher erklärt nach dem Stand seiner Unterlagen, dass der Zweck von dem gedeckt ist, was die Körperspenderinnen und Körperspender erlaubt haben; Grenzen für einzelne Präparate stehen in Anlage H. Länder: {consentCountries}. Letzter Tag der Einwilligung: {consentEndsOn}. Der Entleiher hält diese Grenzen ein und steht für seinen Gebrauch ein. Die Nachweise kann er ohne Namen einsehen bei {evidencePlace}, mit einer Frist von {evidenceNoticeDays|Tag|Tagen}. Ein Gebrauch darüber hinaus endet sofort und wird am selben Tag gemeldet. Ob ein Gesetz über menschliches Gewebe oder über Bestattung am Ort mehr verlangt: bei der örtlichen Behörde erfragen.",
    },
    withdrawal: {
      heading: "Widerruf und neue Ansprüche",
      text: "Wird eine Einwilligung widerrufen oder erhebt eine Familie, eine Gemeinschaft oder eine Behörde Anspruch, so sagt es die Partei, die davon erfährt, der anderen sofort. Der Entleiher nimmt das Präparat innerhalb von {stopDisplayHours|Stunde|Stunden} aus Sicht und Gebrauch, verwahrt es sicher und hält es innerhalb von {withdrawalReturnDays|Tag|Tagen} zur Abholung bereit. Kosten hierfür: {withdrawalCosts}. Keine Partei verlangt Schadenersatz für das frühe Ende. Handelt der Entleiher nicht rechtzeitig, kann der Verleiher das Präparat selbst entfernen.",
    },
    anonymity: {
      heading: "Ungenannt bleiben",
      text: "Niemand auf der Seite des Entleihers sucht herauszufinden, wer eine Körperspenderin oder ein Körperspender war, veröffentlicht, was es verraten könnte, oder nimmt ein Gesicht oder ein Merkmal der Haut aus der Nähe auf. Wer glaubt, eine Person erkannt zu haben, sagt es am selben Tag und nur hier: {anonymityContact}. Was gegen diese Klausel veröffentlicht wurde, wird sofort entfernt, und der Verleiher kann das Präparat zurückrufen.",
    },
    licences: {
      heading: "Erlaubnisse des Entleihers",
      text: "Verlangt der Ort eine Erlaubnis, menschliches Material zu halten, damit zu lehren oder es zu zeigen, so besitzt der Entleiher sie für {venue} während der ganzen Leihzeit und benennt als verantwortliche Person: {responsiblePerson}. Bisher genannte Erlaubnisse: {licencesHeld}. Er sendet von jeder eine Kopie vor {licenceProofBy} und meldet innerhalb eines Tages, wenn eine erlischt; ohne gültige Erlaubnis kommen die Präparate aus der Sicht, und nichts verlässt den Verleiher. Welche Erlaubnis ein Gesetz über Anatomie oder menschliches Gewebe verlangt: bei der örtlichen Behörde erfragen.",
    },
    term: {
      heading: "Leihzeit",
      text: "Die Leihe beginnt mit der Lieferung am {startsOn} und endet, wenn die Präparate den Ort verlassen haben, spätestens am {returnBy}. Eröffnung oder erster Tag des Gebrauchs: {opensOn}. Der Verleiher liefert innerhalb von {deliveryWindowDays|Tag|Tagen} davor; der Entleiher hält die Präparate innerhalb von {collectionDays|Tag|Tagen} nach dem letzten Tag des Gebrauchs zur Abholung bereit. Der Verleiher hält {daysBefore|Tag|Tage} vor und {daysAfter|Tag|Tage} nach der Leihzeit für Prüfung, Verpackung, Weg und Ruhe frei. Nach {graceDays|Tag|Tagen} Nachfrist gilt eine späte Rückgabe als Vertragsbruch, und der Entleiher trägt, was sie kostet.",
    },
    venue: {
      heading: "Ort und Räume",
      text: "Die Präparate bleiben hier: {venue}, {venueAddress}, in diesen Räumen: {rooms}. Der Entleiher fragt {moveConsentDays|Tag|Tage} vor einem Wechsel von Raum oder Gebäude; außer bei unmittelbarer Gefahr bewegt er nichts, ehe der Verleiher schriftlich zugestimmt hat. Nach einem Wechsel ohne Zustimmung kommen die Präparate zurück in ihren Raum oder, wenn der Verleiher es verlangt, nach Hause.",
    },
    extension: {
      heading: "Verlängerung",
      text: "Der Entleiher bittet mindestens {extensionRequestDays|Tag|Tage} vor dem Ende schriftlich um eine Verlängerung. Der Verleiher prüft Deckung, Einwilligung, Erlaubnisse, Zustand, empfangenes Licht und die nächste Buchung neu und antwortet innerhalb von {extensionAnswerDays|Tag|Tagen}. Ohne schriftliches Ja endet die Leihe wie vereinbart. Keine Leihe dauert insgesamt länger als {loanMaxMonths|Monat|Monate}.",
    },
    recall: {
      heading: "Rückruf und frühe Rückgabe",
      text: "Der Verleiher kann ein Präparat sofort zurückrufen, wenn eine Bestimmung verletzt wird, wenn es in Gefahr ist oder wenn eine Behörde es verlangt; der Entleiher hält es dann innerhalb von {recallAtOnceDays|Tag|Tagen} bereit. Aus eigenem Bedarf ruft der Verleiher mit einer Frist von {recallDays|Tag|Tagen} zurück; die Kosten davon trägt: {recallCosts}. Der Entleiher kann mit derselben Frist auf eigene Kosten früher zurückgeben. Ist ein Präparat nicht rechtzeitig bereit, kann der Verleiher es auf Kosten des Entleihers holen. Den Weg nach Hause versperrt nichts.",
    },
    costs: {
      heading: "Kosten",
      text: "Es tragen die Kosten von Vorbereitung und Prüfung: {costOfPreparation}; von Verpackung und Kisten: {costOfPacking}; des Transports hin und zurück: {costOfTransport}; der Deckung: {costOfCover}; von Genehmigungen und Zoll: {costOfPermits}; der Begleitung: {costOfCourier}; von Aufbau und Abbau: {costOfDisplay}. Kosten werden in {currency} angegeben, vor ihrer Entstehung schriftlich vereinbart, in Anlage I aufgeführt und innerhalb von {paymentDays|Tag|Tagen} nach der Rechnung bezahlt. Unbezahlte Kosten erlauben dem Verleiher, den Versand aufzuhalten, nie den Weg nach Hause.",
    },
    fee: {
      heading: "Entgelt",
      text: "Vereinbarte Beträge: {fee}, in {feeInstalments|Rate|Raten}, die letzte {feeDays|Tag|Tage} vor dem Versand bezahlt. Bei menschlichem Material decken alle Beträge nur Kosten; für die Überreste selbst wird nichts bezahlt, und der Entleiher erzielt mit ihnen keinen Gewinn über die eigenen Kosten hinaus. Werden sie nicht rechtzeitig bezahlt, wartet der Versand.",
    },
    "replacement-cost": {
      heading: "Ersatzkosten für die Deckung",
      text: "Anlage A nennt für jedes Präparat, was seine Herstellung oder sein Ersatz kosten würde. Summe der Zeilen: {coverNeeded} ({coverSum}). Sie ist eine Grundlage der Deckung und sagt nichts über einen Wert. Der Verleiher prüft sie neu, wenn die Leihe länger als {revaluationMonths|Monat|Monate} dauert, und der Entleiher passt die Deckung innerhalb eines Monats nach der Mitteilung an; bis dahin steht er für den Unterschied ein.",
    },
    cover: {
      heading: "Deckung",
      text: "Art der Deckung: {coverKind}. Sie gilt gegen alle Gefahren, von dem Augenblick, in dem ein Präparat seinen Platz verlässt, bis es wieder dort ist, Weg und Aufenthalt eingeschlossen, mindestens in Höhe der Ersatzkosten, in: {coverCountries}. Selbstbehalt höchstens {deductible} {currency}, vom Entleiher getragen. Ausgenommen ist höchstens: {coverExclusions}. Empfänger einer Entschädigung: {lossPayee}. Rückgriff gegen die andere Partei: {subrogation}. Der Verleiher hat die Bescheinigung {certificateDays|Tag|Tage} vor dem Versand; ohne sie, oder für eine ungedeckte Stunde, verlässt nichts das Haus.",
    },
    care: {
      heading: "Sorgfalt und Haftung",
      text: "Vom Empfang bis zur Übernahme der Kisten durch den Frachtführer sorgt der Entleiher für die Präparate wie für das Beste, was er selbst hat, und steht für Verlust und Schaden ein, gleich wer sie verursacht hat, {liabilityCap}. Für einen Fehler des Verleihers und für verborgene Mängel steht er nicht ein. Hindert höhere Gewalt eine Partei, so sagt sie es der anderen innerhalb von {forceMajeureHours|Stunde|Stunden} und tut für die Präparate, was sie kann; sonst kann sie sich nicht darauf berufen.",
    },
    "total-loss": {
      heading: "Wenn ein Präparat vom Menschen zerstört wird",
      text: "Was von einem Präparat vom Menschen bleibt, kommt innerhalb von {remainsDays|Tag|Tagen} nach Klärung der Ursache zum Verleiher zurück. Es ist kein Bergungsgut: kein Versicherer übernimmt es, niemand verkauft es, und nur der Verleiher bestimmt über Bestattung oder Einäscherung. Der Entleiher schreibt dies in seine Deckung; hat er es nicht getan, trägt er, was die Heimkehr der Überreste kostet.",
    },
    condition: {
      heading: "Prüfung des Zustands",
      text: "Jedes Präparat wird viermal geprüft: vor dem Abgang, nach dem Auspacken am Ort, vor dem Einpacken für den Heimweg und zu Hause. Die Prüfung am Ort wird innerhalb von {checkHours|Stunde|Stunden} nach dem Öffnen der Kiste gemacht und gesandt, mit mindestens {photographCount|Bild|Bildern} von jedem Präparat, datiert und von beiden Parteien oder ihren Begleitpersonen unterzeichnet. Wer einer Prüfung innerhalb von {silenceHours|Stunde|Stunden} nach Erhalt nicht widerspricht, nimmt sie an. Eine Veränderung, die keine Prüfung des Entleihers nennt, gilt als in seinem Gewahrsam entstanden. Die Prüfungen sind Anlage B.",
    },
    "no-alteration": {
      heading: "Nichts wird verändert",
      text: "Ohne schriftliche Zustimmung reinigt, behandelt, formt, scannt oder zerlegt der Entleiher kein Präparat, montiert es nicht neu und bringt es in keine andere Haltung. Für alle Präparate dieser Leihe erlaubt: {activities}; die schriftliche Genehmigung sagt, was und wie. Der Verleiher beantwortet eine Bitte innerhalb von {alterationAnswerDays|Tag|Tagen}; Schweigen heißt nein. Was ein Präparat vor unmittelbarem Schaden bewahrt, darf geschehen und wird innerhalb von {stabilisingHours|Stunde|Stunden} gemeldet. Sonst trägt der Entleiher die Kosten der Wiederherstellung, und der Verleiher kann zurückrufen.",
    },
    sampling: {
      heading: "Probenahme und genetische Untersuchung",
      text: "{samplingAllowed} Genehmigung: {samplePermit}. Menschliches Material wird nicht genetisch untersucht. Ergebnisse und Reste einer Probe gehen innerhalb von {resultDays|Tag|Tagen} an den Verleiher. Eine anders genommene Probe wird sofort herausgegeben, ihre Daten werden gelöscht, und der Verleiher kann zurückrufen. Ob ein Gesetz über menschliches Gewebe oder über genetische Untersuchungen mehr verlangt: bei der örtlichen Behörde erfragen.",
    },
    environment: {
      heading: "Luft und Licht",
      text: "Solange die Präparate beim Entleiher sind, hält er für alle zusammen {temperatureLowC}–{temperatureHighC} °C mit höchstens {temperatureChangeK} K Änderung in 24 Stunden ein, {humidityLowPercent}–{humidityHighPercent} % relative Feuchte mit höchstens {humidityChangePercent} % Änderung in 24 Stunden, höchstens {illuminanceLx} lx, {lightLxHours} lx·h im Jahr und {uvMicrowattPerLumen} µW/lm Ultraviolett; Anlage D nennt die Grenzen jeder Gruppe. Luft: {pollutants}. Erschütterungen: {vibration}. Er zeichnet mindestens alle {loggingMinutes|Minute|Minuten} auf und sendet die Aufzeichnung alle {environmentReportDays|Tag|Tage}. Er meldet innerhalb von {excursionHours|Stunde|Stunden}, wenn eine Grenze überschritten ist oder die Aufzeichnung eine Lücke von mehr als {gapHours|Stunde|Stunden} hat. Werden die Grenzen bis zum vereinbarten Tag nicht wieder eingehalten, kommen die Präparate aus der Sicht, und der Verleiher kann zurückrufen.",
    },
    display: {
      heading: "Aufstellung",
      text: "Jedes Präparat steht, wie der Verleiher es gebilligt hat, mit diesem Schutz: {protection}, im Abstand von mindestens {barrierMm} mm, auf einer Halterung, die der Verleiher annimmt, und auf einem Boden, der das schwerste mit {heaviestKg} kg trägt, fern von Tageslicht, Wärme und Zugluft. Präparate vom Menschen haben {restrictedRoom} und {noticePlace} einen Hinweis, der sagt, dass sie von Körperspenderinnen und Körperspendern stammen, um Achtung bittet und ein Alter ab {minimumAge|Jahr|Jahren} empfiehlt. Der Entleiher sendet Plan und Halterungen {displayApprovalDays|Tag|Tage} vor der Eröffnung. Was nicht gebilligt ist, wird nicht geöffnet oder geändert, ehe es offen bleibt.",
    },
    handling: {
      heading: "Handhabung",
      text: "Nur wer innerhalb der letzten {trainingMonths|Monat|Monate} geschult wurde, hebt, wendet oder packt ein Präparat aus: mindestens {handlersLeast|Person|Personen}, Schutz der Hände: {gloves}, an den Hebepunkten der Anlage J. Der Entleiher führt den Nachweis der Schulung und zeigt ihn auf Verlangen. Ohne Geschulte bleibt eine Kiste geschlossen, bis der Verleiher auf Kosten des Entleihers jemanden schickt.",
    },
    teaching: {
      heading: "Gebrauch in der Lehre",
      text: "In der Lehre gilt: {teachingUse}. Immer wenn Lernende bei einem Präparat sind, ist anwesend: {supervisor} oder eine schriftlich benannte Lehrperson; höchstens {groupMost|Lernende oder Lernender|Lernende} zugleich, sitzend, wo gehandhabt wird. Niemand Lernendes ist mit einem Präparat allein, kein Präparat verlässt den Raum, und jeder Tag des Gebrauchs steht in einer Liste, die der Verleiher am Ende erhält. Eine Stunde, die dem widerspricht, wird beendet; nach einer zweiten kann der Verleiher zurückrufen.",
    },
    security: {
      heading: "Sicherheit und Brandschutz",
      text: "Tag und Nacht hält der Entleiher die Räume verschlossen, wenn niemand sie beaufsichtigt, lässt Feuer melden, hält Löschmittel bereit, die Präparaten nicht schaden, und sichert den Zugang mit Alarm. Bei Nacht: {nightWatch}. Höchstens {keyHoldersMost|Person hat|Personen haben} Schlüssel, jede in einer Liste genannt. Bei einer Störung steht binnen einer Stunde eine Wache, und der Verleiher erfährt es am selben Tag; sonst kommen die Präparate in ein verschlossenes Depot.",
    },
    jars: {
      heading: "Gläser mit Flüssigkeit",
      text: "Die Gläser enthalten: {fluids}. Der Entleiher hält sie aufrecht und geschlossen, über einer Wanne für {trayPercent} % ihrer Flüssigkeit, in einem gelüfteten Raum ohne Flamme und Funken, mit Sicherheitsdatenblatt, Handschuhen, Bindemittel und einem verschließbaren Gefäß. Alle {jarCheckDays|Tag|Tage} sieht er nach Stand, Farbe und Verschluss und meldet am selben Tag, wenn ein Stand sinkt. Ein undichtes Glas kommt sofort in das Gefäß, und niemand füllt ohne ein Wort des Verleihers nach.",
    },
    packing: {
      heading: "Verpackung",
      text: "Für den Heimweg verpackt: {packer}; in den Kisten des Verleihers, mit denselben Materialien und in der Ordnung der Anlage F. Leere Kisten bleiben geschlossen, vollständig und sauber bei {crateLowC}–{crateHighC} °C und {crateHumidityLowPercent}–{crateHumidityHighPercent} % relativer Feuchte, beieinander und frei von Schädlingen. Was fehlt, wird innerhalb eines Tages gemeldet und vor dem Packen auf Kosten dessen ersetzt, der es verwahrt hat; ohne Zustimmung des Verleihers reist nichts in anderer Verpackung.",
    },
    transport: {
      heading: "Transport",
      text: "Frachtführer: {carriers}. Die Präparate reisen auf diesem Weg: {transportMode}, in einem luftgefederten Fahrzeug mit geregeltem Laderaum, dessen Temperatur aufgezeichnet wird, mit mindestens {driversLeast|Fahrerin oder Fahrer|Fahrenden}, in jedem Augenblick verschlossen oder bewacht. Wechsel des Fahrzeugs: {transshipment}. Der Entleiher schlägt Frachtführer und Strecke {transportApprovalDays|Tag|Tage} vor der Abfahrt vor; der Verleiher billigt sie schriftlich, und Anlage E hält sie fest. Ohne Billigung wird nichts übergeben, und wer von der Strecke abweicht, wird am nächsten sicheren Ort angehalten.",
    },
    courier: {
      heading: "Begleitung",
      text: "Begleitperson des Verleihers: {courier}. Sie kann Laden, Auspacken und Aufstellen anhalten, bis einer Gefahr begegnet ist, und unterzeichnet die Prüfungen für den Verleiher. Reist sie mit, so gelten {courierClass}, {courierNights|Nacht|Nächte} und {courierPerDay} {currency} am Tag; wer es trägt, sagt Klausel 15. Die Parteien fragen zuerst, ob die Reise nötig ist. Eine Kiste, bei der sie zugegen sein soll, bleibt geschlossen, bis sie da oder zugeschaltet ist.",
    },
    border: {
      heading: "Zoll und Genehmigungen",
      text: "Die Präparate gehen für eine Zeit von {borderFrom} nach {borderTo} und kommen zurück. Einführer: {importer}. Grundlage: {customsBasis}. Jede Partei beschafft die Papiere ihres Landes {permitDays|Tag|Tage} vor dem Versand und nennt der anderen die Nummern; der Einführer zeigt innerhalb von {dischargeDays|Tag|Tagen} nach der Rückkehr, dass der vorübergehende Aufenthalt erledigt ist. Ohne ein Papier geht nichts ab; Abgaben eines nicht erledigten Aufenthalts trägt der Einführer. Welche Vorschriften über Zoll, Gesundheit oder Kulturgut gelten: bei der örtlichen Behörde erfragen.",
    },
    immunity: {
      heading: "Freies Geleit und Rückgabezusage",
      text: "Ein Gesetz über freies Geleit oder die Rückgabezusage eines Staates: {immunity}. Wo darum gebeten wird, stellt der Entleiher den Antrag {immunityMonths|Monat|Monate} vor dem Versand und sendet die Antwort sofort. Wird sie verweigert, kann der Verleiher die Präparate ohne Kosten für sich zurückhalten. Ob es eine solche Regelung gibt und was sie schützt: bei der örtlichen Behörde erfragen.",
    },
    receipt: {
      heading: "Empfang und Ruhe",
      text: "Bei der Ankunft zählt der Entleiher die Kisten, sieht nach Siegeln und Außenseiten und bestätigt den Empfang innerhalb von {receiptHours|Stunde|Stunden}, mit Bemerkungen und Bildern von allem Ungewöhnlichen. Die Kisten ruhen mindestens {restHours|Stunde|Stunden} geschlossen im Raum, und bis zu dem Augenblick, den das Programm nennt, wenn er später liegt. Nach dem Öffnen werden Präparate und Bestandteile gezählt, und eine zweite Bestätigung wird unterzeichnet. Eine zu früh geöffnete Kiste wird dem Verleiher gemeldet, und für den Schaden durch Feuchte steht der Entleiher ein.",
    },
    access: {
      heading: "Aufsicht und Zugang",
      text: "Der Verleiher kann Präparate, Räume und Aufzeichnungen mit einer Frist von {inspectionDays|Tag|Tagen} ansehen, bei Gefahr sofort. Der Entleiher sendet Aufzeichnungen von Luft und Licht innerhalb von {recordHours|Stunde|Stunden} nach der Bitte darum und sagt Bauarbeiten, Veranstaltungen und Wechsel des Personals bei den Präparaten rechtzeitig an. Wird der Zugang verweigert, kann der Verleiher sofort zurückrufen.",
    },
    incident: {
      heading: "Vorfälle",
      text: "Geschieht etwas, so sichert der Entleiher Menschen und Präparat, stellt nichts wieder her, hebt alle Teile und Aufzeichnungen auf, macht Bilder für den Verleiher und ruft sofort an: {lenderEmergency}. Er schreibt innerhalb von {incidentDays|Arbeitstag|Arbeitstagen} und berichtet innerhalb von {incidentReportDays|Arbeitstag|Arbeitstagen} vollständig: wann, wo, wer, was, der Zustand davor, die Maßnahmen, wer es erfahren hat. Er hilft beim Anspruch gegen den Versicherer. Was nicht rechtzeitig gemeldet wird, gilt als in seinem Gewahrsam und durch sein Verschulden geschehen.",
    },
    emergency: {
      heading: "Notfälle",
      text: "Der Entleiher hat einen schriftlichen Plan für Feuer, Wasser, Diebstahl und Unruhen, nimmt die Präparate darin auf und sendet die sie betreffende Seite {emergencyPlanDays|Tag|Tage} vor der Lieferung. Reihenfolge der Bergung: {salvageOrder}. Menschen gehen vor. Anlage J liegt bei den Präparaten. Ohne Plan bleiben die Präparate in ihren Kisten, bis es einen gibt.",
    },
    pictures: {
      heading: "Bilder, Film und Scans",
      text: "Erlaubt: {pictures}. Aufnahmen durch Besucherinnen und Besucher: {visitorPictures}; der Entleiher bringt einen Hinweis an und sorgt, dass er befolgt wird. Dreidimensionale Daten: {threeDimensional}. Um alles andere bittet der Entleiher schriftlich, und der Verleiher antwortet innerhalb von {pictureAnswerDays|Tag|Tagen}; Schweigen heißt nein. Bilder von Präparaten vom Menschen werden behandelt wie die Präparate selbst. Was ohne Erlaubnis entstand, wird sofort herausgegeben und entfernt.",
    },
    credit: {
      heading: "Nennung und Texte",
      text: "Jedes Zeigen und jede Veröffentlichung trägt die Nennung „{creditLine}“. Der Entleiher sendet Beschriftungen und Texte über Präparate vom Menschen {labelApprovalDays|Tag|Tage} vor Druck oder Aushang, und der Verleiher antwortet in der Hälfte dieser Zeit. Dank an die Körperspenderinnen und Körperspender nach Anlage K: {acknowledgement}. Ein nicht gebilligter Text wird abgenommen, bis er es ist.",
    },
    publications: {
      heading: "Veröffentlichungen und Berichte",
      text: "Der Entleiher sendet dem Verleiher {copies|Exemplar|Exemplare} jeder Veröffentlichung, die ein Präparat zeigt, und innerhalb von {attendanceDays|Tag|Tagen} nach dem Ende einen kurzen Bericht: Tage, Zahl der Besuchenden oder Lernenden, Bemerkungen zum Zustand, Einwände, Erfahrungen. Bis der Bericht da ist, braucht der Verleiher keine weitere Anfrage zu prüfen.",
    },
    promotion: {
      heading: "Werbung und Handelswaren",
      text: "Gebrauch von Präparaten vom Menschen oder ihrem Abbild in Werbung, auf Waren oder als Zierde: {promotion}. Der Entleiher verpflichtet seine Förderer und Partner ebenso. Was gegen diese Klausel erscheint, wird innerhalb eines Tages auf Kosten des Entleihers zurückgezogen; sonst kann der Verleiher zurückrufen.",
    },
    objections: {
      heading: "Beschwerden und Bitten von Gemeinschaften",
      text: "Ein Einwand gegen das Zeigen eines Präparats vom Menschen oder die Bitte, es zu entfernen, wird mit Achtung aufgenommen, beantwortet und innerhalb von {objectionHours|Stunde|Stunden} dem Verleiher gesagt. Die Parteien entscheiden darüber gemeinsam innerhalb von {objectionReviewDays|Tag|Tagen}; bis dahin nimmt der Entleiher das Präparat aus der Sicht, wenn eine Familie oder eine Herkunftsgemeinschaft darum bittet. Einigen sie sich nicht, entscheidet der Verleiher.",
    },
    confidentiality: {
      heading: "Vertraulichkeit und Datenschutz",
      text: "Berichte über Gebäude, Ersatzkosten, Strecken, Kontakte und was von Körperspenderinnen und Körperspendern bekannt ist, dienen nur dieser Leihe, sehen nur, wer sie braucht, und werden {retentionMonths|Monat|Monate} nach dem Ende gelöscht, soweit nichts aufzubewahren ist. Ein Verlust oder eine Weitergabe wird innerhalb von {breachHours|Stunde|Stunden} hier gemeldet: {dataContact}. Wer Daten anders weitergibt, trägt den Schaden. Was ein Gesetz über Datenschutz für Lebende und Verstorbene verlangt: bei der örtlichen Behörde erfragen.",
    },
    cancellation: {
      heading: "Absage",
      text: "Jede Partei kann bis zum Versand schriftlich absagen. Sagt der Entleiher ab, zahlt er die entstandenen und vereinbarten Kosten; sind diese geringer, mindestens {cancelEarlyPercent} % der vereinbarten Beträge ab {cancelEarlyDays|Tag|Tagen} vor dem Versand und {cancelLatePercent} % ab {cancelLateDays|Tag|Tagen} davor. Sagt der Verleiher ab, trägt er die eigenen Kosten. Nichts ist geschuldet, wenn Einwilligung, eine Behörde oder höhere Gewalt der Grund ist.",
    },
    breach: {
      heading: "Vertragsbruch, Beendigung und Insolvenz",
      text: "Wer eine Bestimmung verletzt, behebt es innerhalb von {cureDays|Tag|Tagen} nach der Aufforderung. Geschieht das nicht oder kann der Entleiher nicht mehr zahlen, kann die andere Partei den Vertrag beenden; der Verleiher darf dann nach Ankündigung das Haus betreten, die Präparate holen und unmittelbar mit Frachtführern verhandeln. Der Entleiher sichert die Kosten des Heimwegs vor dem Versand mit {deposit} {currency}, die der Verleiher zurückgibt, wenn das letzte Präparat eingecheckt ist. In der Insolvenz gehören die Präparate nicht zur Masse.",
    },
    changes: {
      heading: "Austausch und Nachträge",
      text: "Eine Änderung, auch ein hinzugefügtes oder ausgetauschtes Präparat, ist ein nummerierter Nachtrag: eine neue Fassung der Bestimmungen, die nennt, welche Fassung sie ändert und was abweicht. Beide Parteien unterzeichnen ihn innerhalb von {amendmentDays|Tag|Tagen}; bis dahin gilt die letzte von beiden unterzeichnete Fassung. Was auf eine nicht unterzeichnete Änderung hin geschieht, geschieht auf Gefahr dessen, der es tut.",
    },
    law: {
      heading: "Recht, Ort und Streit",
      text: "Es gilt das Recht dieses Landes, soweit die Parteien es wählen können: {lawCountry}. Sie sprechen {negotiationDays|Tag|Tage} miteinander, gerechnet ab dem Tag, an dem eine von ihnen einen Streit benennt. Danach: {disputePath}; Ort: {court}. Maßgeblich ist der Text in dieser Sprache: {rulingLanguage}. Ein Streit hält den Heimweg nie auf. Ob zwingendes Recht eines anderen Ortes vorgeht: bei der örtlichen Behörde erfragen.",
    },
    signature: {
      heading: "Form der Unterschrift",
      text: "Beide Parteien unterzeichnen {signatureForm}, in {counterparts|Ausfertigung|Ausfertigungen}, mindestens {signedDays|Tag|Tage} vor dem Versand. Eine Unterschrift enthält Name, Aufgabe, Zeit, Sprache und den SHA-256 der Bestimmungen; eine unterzeichnete Fassung ändert sich nie. Verlangt das Haus einer Partei eine andere Form, sagt sie es vorher. Ohne beide Unterschriften geht nichts ab. Was eine Vorschrift über elektronische Signaturen verlangt: bei der örtlichen Behörde erfragen.",
    },
    disposition: {
      heading: "Präparate, deren Rückgabe geschuldet ist",
      text: "Einige Präparate sind der Bestattung, der Einäscherung, einer Familie oder einer Gemeinschaft geschuldet; der früheste dieser Tage ist der {dispositionDueOn}. Der Entleiher hat sie mindestens {dispositionMarginDays|Tag|Tage} davor auf dem Heimweg; was versprochen ist, führt aus: {dispositionBy}. Keine Verlängerung geht darüber hinaus. Verspäten sie sich, holt der Verleiher sie sofort auf Kosten des Entleihers. Was ein Gesetz über Bestattung oder Anatomie verlangt: bei der örtlichen Behörde erfragen.",
    },
    animals: {
      heading: "Tierisches Material",
      text: "Der Verleiher nennt diese Papiere zu Artenschutz, Veterinärkontrolle und Herkunft: {animalPapers}. Der Entleiher beschafft, was sein Land verlangt, sendet Kopien {animalPaperDays|Tag|Tage} vor dem Versand, bewahrt alle bei den Präparaten auf und zeigt sie auf Verlangen. Ohne sie bleiben die tierischen Präparate, wo sie sind. Was das Übereinkommen über den Handel mit gefährdeten Arten und die Gesetze über Artenschutz, Veterinärkontrolle und Jagd verlangen: bei der örtlichen Behörde erfragen.",
    },
    sustainability: {
      heading: "Nachhaltigkeit",
      text: "Bei Luft, Transport und Kisten wählen die Parteien den Weg, der die Umwelt am wenigsten belastet und die Präparate dennoch schützt: {crateReuse}, gemeinsame Ladungen, Begleitung über Video, wo das genügt, weite Bereiche der Luft, wo Anlage D sie zulässt. Der Entleiher schlägt seine Wahl {sustainabilityDays|Tag|Tage} vor dem Packen vor. Einigen sich die Parteien nicht, entscheidet die Sicherheit der Präparate.",
    },
  },
  ...germanWords,
};
