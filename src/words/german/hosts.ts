import type { hostWords } from "../hosts.ts";

export const hosts: typeof hostWords = {
  study: "Flocwright-Studie",
  otherNotOpened: "Die andere Studie wurde nicht geöffnet",
  unsavedHere: "Etwas in diesem Fenster Eingegebenes ist noch nicht gespeichert.",
  notOpened: "Diese Studie ließ sich nicht öffnen",
  pageMayNot: "Diese Seite darf Flocwright nicht aufrufen.",
  crashed: "Die Oberfläche ist innerhalb einer Minute mehrmals abgestürzt.",
  savedIsThere: "Alles, was gespeichert war, steht in der Studiendatei.",
  loadAgain: "Neu laden",
  close: "Schließen",
  unsaved: "Etwas hier Eingegebenes ist noch nicht gespeichert.",
  unsavedLost:
    "Die Studiendatei lässt sich im Moment nicht beschreiben. Wenn Sie jetzt schließen, geht verloren, was nicht gespeichert ist.",
  stay: "Bleiben",
  closeUnsaved: "Schließen, ohne es zu speichern",
  menu: {
    view: "Ansicht",
    resetZoom: "Originalgröße",
    zoomIn: "Vergrößern",
    zoomOut: "Verkleinern",
    fullScreen: "Vollbild ein/aus",
  },
};
