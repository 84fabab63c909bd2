import type { jarPlanWords } from "../jar-plan.ts";

export const jarPlan: typeof jarPlanWords = {
  lowHigh: "low muss unter high liegen.",
  secondLowHigh: "second.low muss unter second.high liegen.",
  secondMissing: (design) => `second fehlt: Ein Plan ${design} hat zwei Polymere.`,
  secondNotWanted: (design) =>
    `second gehört zu den Plänen fix-one, factorial und central-composite, nicht zu ${design}.`,
  geometricLow:
    "low muss bei einer geometrischen Dosisleiter über 0 liegen: Becher ohne Polymer zählen für sich.",
  bracketingNeeds: "eine Dosisleiter um einen Schätzwert braucht guess und stepPct.",
  stepsOutside: (outside, steps) =>
    `${outside} von ${steps} Stufen um den Schätzwert liegen außerhalb der niedrigsten und höchsten Dosis und entfallen.`,
  fewSteps: "zwischen low und high liegen weniger als zwei Stufen.",
  threeLevels: "Ein faktorieller Plan hat drei Stufen je Polymer, gleich was steps sagt.",
  smallVolume: (letter, volumeMl, syringeMl) =>
    `Das kleinste Volumen der Lösung ${letter}, ${volumeMl} mL, ist für eine Spritze von ${syringeMl} mL zu klein, um genau zu sein: schwächere Stammlösung oder kleinere Spritze nehmen.`,
  largeVolume: (volumeMl) =>
    `Das größte Volumen, ${volumeMl} mL, ist für den Becher zu groß: stärkere Stammlösung ansetzen.`,
  muchAdded: (volumeMl, sampleMl) =>
    `Bis zu ${volumeMl} mL kommen zu ${sampleMl} mL hinzu, mehr als 10 %: stärkere Stammlösung ansetzen und beim Ausgleichswasser bleiben, damit alle Becher gleich verdünnt sind.`,
};
