import type { glossaryWords } from "../glossary.ts";

/**
 * The words here, and one German word for each other thing that is spoken of in many places:
 *
 * - TS, dry solids: Trockenrückstand (TR); volatile share: Glühverlust, in table heads oTR; feed solids as TS: TR des Zulaufs;
 *   suspended solids: abfiltrierbare Stoffe, where short TSS; solids of either kind: Feststoff; spread on land: Trockenmasse
 * - active: Wirksubstanz (WS); neat, as supplied: Handelsware; strength of a solution: Konzentration
 * - jar: Becher; series: Reihe; response: Messgröße; reading: Ablesung; run the jars: Becher abarbeiten; ladder: Dosisleiter
 * - make-down: Ansetzen, Ansatz; its unit: Ansetzanlage; mixing started: Beginn des Ansetzens; carrier water: Nachverdünnungswasser
 * - feed flow: Zulaufstrom; pump flow: Förderstrom; rates: Mengenströme; dry-solids load: TR-Fracht; loading: Belastung
 * - draw-down: Auslitern, one of them Auslitermessung; proven: nachgewiesen; good from, to: zulässig von, bis (catch), gilt (dose)
 * - plant run: Betriebsversuch; settled: eingefahren; works, at the plant: Betrieb; return load: Rückbelastung
 * - bound: Schranke; interval: Intervall of one fit, Bereich over several; seed: Startwert; note: Bemerkung
 * - power number: Leistungskennzahl; rpm: U/min; relief valve: Überdruckventil; licensed engineer: zugelassene Ingenieurfachkraft
 *
 * Whoever reads is asked in the infinitive ("Probe eintragen"), and as Sie only where that will not do. Signs: „…“, 2,5 %, 95-%-Band.
 */
export const glossary: typeof glossaryWords = {
  "active share": {
    term: "Wirksubstanzanteil",
    means: "Der Massenanteil der Handelsware, der Polymer ist; erfragen, nach welcher Prüfung.",
  },
  "as supplied": {
    term: "Handelsware",
    means: "Gezählt, wie das Produkt im Gebinde kommt: Wirksubstanz geteilt durch Wirksubstanzanteil.",
  },
  "bench-to-plant factor": {
    term: "Übertragungsfaktor",
    means: "Die im Betrieb eingefahrene Dosis, geteilt durch die Dosis, die die Becher ergaben.",
  },
  "blank water": {
    term: "Ausgleichswasser",
    means: "Wasser, das zugegeben wird, damit jeder Becher dasselbe Volumen enthält.",
  },
  cake: {
    term: "Kuchen",
    means: "Was vom Schlamm bleibt, wenn das Wasser ausgepresst ist; sein TR sagt, wie trocken er ist.",
  },
  capture: {
    term: "Abscheidegrad",
    means: "Der Anteil des Feststoffs im Zulauf, der im Kuchen landet und nicht im Filtrat.",
  },
  "carrier water": {
    term: "Nachverdünnungswasser",
    means: "Wasser, das die Lösung nach dem Ansetzen verdünnt, bevor sie auf den Schlamm trifft.",
  },
  censored: {
    term: "zensiert",
    means: "Nur bekannt als über oder unter einem Wert, etwa eine Ablesung über dem Messbereich.",
  },
  "chance to miss": {
    term: "Verfehlungsrisiko",
    means:
      "Wie oft ein Grenzwert bei dieser Dosis verfehlt würde, wenn der Zulauf-TR wie angegeben schwankt.",
  },
  "confidence band": { term: "Vertrauensband", means: "Wo die wahre Kurve erwartet wird, mit 95 %." },
  "control limits": {
    term: "Eingriffsgrenzen",
    means: "Grenzen, in denen Routineversuche allein durch Zufall schwanken.",
  },
  CST: {
    term: "CST",
    means:
      "Kapillare Fließzeit: wie lange Wasser braucht, um in einem Papier von einer Marke zur nächsten zu wandern.",
  },
  "cylinder band": {
    term: "Messzylinderband",
    means:
      "In welchem Band eine Auslitermessung im Messzylinder liegen darf, wenn die Pumpe ihrer Geraden folgt.",
  },
  dose: {
    term: "Dosis",
    means: "Kilogramm Wirksubstanz (WS) je Tonne Trockenrückstand (TR), wenn nichts anderes dabeisteht.",
  },
  "drained volume": {
    term: "abgelaufenes Volumen",
    means:
      "Filtrat, das in fester Zeit vom Schlamm eines Bechers abläuft: wie schnell er sein Wasser abgibt.",
  },
  "draw-down": {
    term: "Auslitern",
    means: "Was eine Pumpe bei einer Einstellung fördert, über eine gestoppte Zeit aufgefangen.",
  },
  "dry solids (DS)": {
    term: "Trockenrückstand (TR)",
    means: "Was vom Schlamm bleibt, wenn alles Wasser weg ist.",
  },
  "dry-solids load": {
    term: "TR-Fracht",
    means: "Trockenrückstand, den die Maschine in einer Stunde bekommt: Zulaufstrom mal TR.",
  },
  filtrate: { term: "Filtrat", means: "Das Wasser, das vom Schlamm abläuft oder aus ihm gepresst wird." },
  "filtrate turbidity": {
    term: "Trübung des Filtrats",
    means: "Wie trüb das Filtrat ist, in NTU oder FNU: je niedriger, desto weniger Feststoff kam durch.",
  },
  "flow per setting": {
    term: "Förderstrom je Einstellung",
    means:
      "Was eine Pumpe bei jeder Einstellung am Bedienfeld fördert: die Gerade durch ihre Auslitermessungen.",
  },
  "guard band": {
    term: "Sicherheitsabstand",
    means: "Abstand, der zu der Kante gehalten wird, an der ein Grenzwert verfehlt wird.",
  },
  interval: { term: "Intervall", means: "Die Dosen, die die Ablesungen nicht ausschließen, mit 95 %." },
  jar: { term: "Becher", means: "Ein Becherglas Schlamm, für sich dosiert und gerührt." },
  knee: { term: "Knick", means: "Die Dosis, über der eine Messgröße kaum noch gewinnt." },
  "lack of fit": {
    term: "Modellabweichung",
    means: "Ob eine Kurve ihre Punkte weiter verfehlt, als sich wiederholte Becher unterscheiden.",
  },
  "make-down": { term: "Ansetzen", means: "Ein Produkt zu einer Lösung bekannter Konzentration lösen." },
  neat: { term: "unverdünnt", means: "Das Produkt als Handelsware, bevor Wasser dazukommt." },
  "no-polymer jar": {
    term: "Becher ohne Polymer",
    means: "Ein Becher mit Dosis 0, sonst behandelt wie die anderen.",
  },
  plateau: { term: "Plateau", means: "Wo eine Messgröße gleich bleibt, obwohl die Dosis weiter steigt." },
  "proven range": {
    term: "nachgewiesener Bereich",
    means: "Die Einstellungen, zwischen denen ausgelitert wurde; darüber hinaus wird nichts angeboten.",
  },
  "re-read": {
    term: "Wiederholungsablesung",
    means: "Derselbe Becher erneut abgelesen; wird gemittelt und zählt nie als weiterer Becher.",
  },
  replicate: {
    term: "Wiederholung",
    means: "Ein weiterer, für sich konditionierter Becher bei derselben Dosis.",
  },
  series: { term: "Reihe", means: "Becher aus einer Probe mit einem Polymer oder mit zweien nacheinander." },
  SRF: {
    term: "spezifischer Filtrationswiderstand",
    means: "Wie stark der Kuchen sein Wasser zurückhält (SRF).",
  },
  "standard jar": {
    term: "Standardbecher",
    means: "Ein Becher, der in einer Reihe wiederholt wird und zeigt, ob Schlamm oder Lösung altern.",
  },
  "stock solution": {
    term: "Stammlösung",
    means: "Fürs Labor gelöstes Produkt bekannter Konzentration, aus der die Spritzen gefüllt werden.",
  },
  tie: {
    term: "Gleichstand",
    means: "Modelle, die die Becher etwa gleich gut erklären; der Bereich umfasst dann, was alle sagen.",
  },
  "TS, VS, TSS": {
    term: "TR, oTR, TSS",
    means: "Trockenrückstand; sein Glühverlust; abfiltrierbare Stoffe, ohne das Gelöste.",
  },
  turndown: {
    term: "Stellbereich",
    means: "Der höchste Förderstrom einer Pumpe geteilt durch ihren niedrigsten.",
  },
  "water blank": { term: "Wasserblindwert", means: "Die CST von Wasser auf demselben Papier." },
  "working window": {
    term: "Arbeitsfenster",
    means: "Die Dosen, bei denen alle Grenzwerte zugleich eingehalten sind.",
  },
};
