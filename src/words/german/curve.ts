import type { jarTableWords, modelWords, surfaceWords, verdictWords } from "../curve.ts";

export const models: typeof modelWords = {
  constant: "Die Dosis macht keinen Unterschied.",
  linear: "Jede Dosisstufe bewirkt das Gleiche.",
  quadratic: "Ein Tal (oder Berg) mit gleichen Flanken.",
  "quadratic-log": "Ein Tal mit gleichen Flanken je Verdopplung der Dosis: unten steil, oben flach.",
  cubic: "Ein Tal mit zwei verschiedenen Flanken.",
  "cubic-log": "Ein Tal mit zwei verschiedenen Flanken je Verdopplung der Dosis.",
  polynomial: "Ein Polynom des gewünschten Grades.",
  "saturating-exponential": "Steigt (oder fällt) schnell und flacht dann ab, ohne umzukehren.",
  plateau: "Gerade bis zum Knick, danach eben.",
  "gaussian-valley": "Ein Tal zwischen flachen Schultern: zu wenig und viel zu viel sind gleich schlecht.",
  logistic: "Eine S-Form: erst geschieht wenig, dann viel, dann nichts mehr.",
  "log-logistic": "Eine S-Form mit langem oberem Ende: Der meiste Gewinn kommt früh.",
};

const counts = ["zwei", "drei", "vier", "fünf"];
const withArticle = { knee: "der Knick", optimum: "das Optimum" } as const;
const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

// The responses have three genders and some are plural, so each stands before a colon.
export const verdicts: typeof verdictWords = {
  onlyNoPolymer: "Nur Becher ohne Polymer wurden abgelesen: Becher mit Polymer ergänzen.",
  noCurvedModel:
    "Kein gekrümmtes Modell ließ sich an diese Becher anpassen: Ablesungen prüfen oder Dosen dazwischen ergänzen.",
  fewDoses: (doses) =>
    `${doses} ${doses === 1 ? "einzelne Dosis ist" : "verschiedene Dosen sind"} zu wenig, um eine Kurve von Streuung zu unterscheiden: mindestens sechs Dosen fahren, einige davon doppelt.`,
  fewJars: (jars) =>
    `${jars} Becher ${jars === 1 ? "ist" : "sind"} zu wenig, um eine Kurve von Streuung zu unterscheiden: mindestens sechs Dosen fahren, einige davon doppelt.`,
  masked:
    "Ein Ausreißer verdeckt, dass kein Modell durch die Dosen geht: diesen Becher wiederholen, dann neu ansehen.",
  noModel:
    "Kein Modell geht innerhalb der Streuung der Wiederholungen durch die Dosen: die Becher prüfen, die am weitesten von der Kurve liegen.",
  noEffect: (response, low, high, unit) =>
    `${response}: zwischen ${low} und ${high} ${unit} keine Änderung mit der Dosis, die über die Streuung hinausgeht.`,
  stillImproving: (response, high, unit) =>
    `${response}: bei der höchsten Dosis noch im Besserwerden; Becher über ${high} ${unit} ergänzen.`,
  onlyWorse: (response, low, unit) =>
    `${response}: wird mit der Dosis nur schlechter; Becher unter ${low} ${unit} ergänzen.`,
  noTurn: (response, wanted, low, high, unit) =>
    `${response}: kein ${wanted === "minimum" ? "Tal" : "Gipfel"} zwischen ${low} und ${high} ${unit}.`,
  outside: (kind, side, end, unit) =>
    side === "above"
      ? `${capital(withArticle[kind])} liegt über den geprüften Dosen: Becher über ${end} ${unit} ergänzen.`
      : `${capital(withArticle[kind])} liegt unter den geprüften Dosen: Becher unter ${end} ${unit} ergänzen.`,
  ninety: (sentence, dose, unit) => `${sentence} 90 % des Gewinns sind bei ${dose} ${unit} erreicht.`,
  unbounded: (kind, side, low, high, unit) =>
    `Die Becher sagen nicht, wo ${withArticle[kind]} ${side === "low" ? "nach unten" : side === "high" ? "nach oben" : "nach beiden Seiten"} endet: Becher jenseits von ${low} und ${high} ${unit} ergänzen oder Becher wiederholen.`,
  span: (low, high) => `${low ?? "unter den geprüften Dosen"} bis ${high ?? "über den geprüften Dosen"}`,
  ambiguous: (kind, span, unit) =>
    `Gleich gut passende Modelle legen ${kind === "knee" ? "den Knick" : "das Optimum"} an verschiedene Stellen (${span} ${unit}): dort Becher ergänzen, um sie zu trennen.`,
  located: (dose, span, unit) => `${dose} ${unit}, ${span}`,
  locatedKnee: (dose, gainPct, span, unit) => `${dose} ${unit} (${gainPct} % des Gewinns), ${span}`,
  tie: (count) => `${counts[count - 2] ?? String(count)} Modelle liegen gleichauf`,
  mover: (jar) => `Becher ${jar} hat den größten Einfluss`,
  edge: "das Intervall verlässt die geprüften Dosen, also dort Becher ergänzen",
};

const turns = { minimum: "ein Minimum", maximum: "ein Maximum", saddle: "ein Sattel" } as const;

export const surfaceVerdicts: typeof surfaceWords = {
  pair: (a, b, unit) => `A ${a} und B ${b} ${unit}`,
  fewPairs: (pairs, jars) =>
    `${pairs === 1 ? "1 Dosispaar" : `${pairs} Dosispaare`} in ${jars} Bechern ${pairs === 1 ? "ist" : "sind"} zu wenig für eine Fläche: Ein Plan 3 × 3 mit wiederholtem Mittelpunkt genügt.`,
  fewLines:
    "Diese Dosispaare liegen auf zu wenigen Linien, um A von B zu unterscheiden: beide auch dazwischen verändern.",
  misses:
    "Die Fläche verfehlt die Dosen stärker, als die Wiederholungen streuen: die Becher prüfen, die am weitesten abliegen.",
  noEffect: (response) =>
    `${response}: keine Änderung mit einer der beiden Dosen, die über die Streuung hinausgeht.`,
  noCurvature: (response) => `${response}: keine Krümmung, an der sich ein Optimum festmachen lässt.`,
  ridge: (response) =>
    `${response}: verläuft auf einem Grat; viele Paare von A und B sind gleich gut, also die Kosten entscheiden lassen.`,
  otherKind: (response, found, wanted) =>
    `${response}: Dort liegt ${turns[found]} und kein ${wanted === "minimum" ? "Minimum" : "Maximum"}; das beste Paar liegt am Rand des Geprüften.`,
  outside: (pair) =>
    `Das Optimum, ${pair}, liegt außerhalb der geprüften Paare: Becher in seiner Richtung ergänzen.`,
  unclosed:
    "Die Becher schließen das Optimum nicht ein: Becher wiederholen oder Paare weiter außen ergänzen.",
  located: (pair, lowA, highA, lowB, highB) => `${pair} (A ${lowA} bis ${highA}, B ${lowB} bis ${highB})`,
};

export const jarTable: typeof jarTableWords = {
  twoDoses: (name, jar, line, other) =>
    `${name}: Becher ${jar} hat in Zeile ${line} eine Dosis und in Zeile ${other} eine andere; ein Becher hat eine Dosis, also dem zweiten einen anderen Namen geben.`,
  twoBounds: (name, jar, lines) =>
    `${name}: Becher ${jar} hat eine Ablesung über und eine unter einer Schranke (Zeilen ${lines}).`,
};
