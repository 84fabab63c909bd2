import type { helpWords } from "../help.ts";

export const help: typeof helpWords = {
  title: "Tasten und Wörter",
  close: "Schließen (Esc)",
  words: "Wörter",
  guideSays: (title) =>
    `Der Wegweiser unter der Leiste sagt, was auf dem Weg zu den ersten Pumpeneinstellungen als Nächstes kommt: ${title}.`,
  guideDone: "Der Wegweiser hat zu den ersten Pumpeneinstellungen geführt und hat nichts mehr zu fragen.",
  showGuide: "Wegweiser zeigen",
  hideGuide: "Wegweiser ausblenden",
  shortcuts: {
    everywhere: {
      where: "Überall",
      keys: {
        rooms: { key: "Strg 1 bis Strg 6", does: "zu Probe, Labor, Kurven, Dosis, Betrieb, Akte gehen" },
        undo: { key: "Strg Z, Strg Y", does: "den letzten Schritt zurücknehmen, ihn wiederholen" },
        accept: { key: "Enter, Tab", does: "eine Zahl annehmen und das Feld verlassen" },
        escape: { key: "Esc", does: "die angenommene Zahl zurückholen; schließen, was offen ist" },
        help: { key: "F1", does: "diese Liste" },
        guide: { key: "F2", does: "zu dem Feld gehen, nach dem der Wegweiser als Nächstes fragt" },
      },
    },
    table: {
      where: "Die Tabelle der Becher",
      keys: {
        move: { key: "Pfeiltasten, Bild auf, Bild ab", does: "von Zelle zu Zelle gehen" },
        choose: { key: "Umschalt und eine Pfeiltaste", does: "Zellen einer Spalte auswählen" },
        fill: { key: "Strg D", does: "die gewählten Zellen nach unten füllen oder die Zelle darüber nehmen" },
        copy: {
          key: "Strg C, Strg V",
          does: "gewählte Zellen kopieren; einen Block aus einer Tabellenkalkulation einfügen",
        },
        clear: { key: "Entf", does: "die gewählten Zellen leeren" },
        over: { key: "> vor einer Zahl", does: "die Ablesung liegt über dem Messbereich des Geräts" },
      },
    },
    running: {
      where: "Becher abarbeiten",
      keys: {
        digits: { key: "Ziffern, Punkt oder Komma", does: "die Zahl, nach der gefragt wird" },
        enter: { key: "Enter", does: "annehmen und weiter; einen Zeitmesser starten oder anhalten" },
        plus: { key: "+", does: "eine Zwischenzeit, während ein Becher abläuft; sonst über dem Messbereich" },
        minus: { key: "−", does: "zurück" },
        again: { key: "/", does: "denselben Becher erneut ablesen" },
        leaveOut: { key: "*", does: "den Becher weglassen, dann die Nummer des Grundes" },
        curves: { key: "c, s", does: "die bisherigen Kurven; Ton an oder aus" },
      },
    },
    doseLine: {
      where: "Die Dosislinie",
      keys: {
        move: {
          key: "Pfeiltasten",
          does: "die Dosis ein wenig verschieben; Bild auf und ab weiter; Pos1 und Ende an die Enden",
        },
      },
    },
  },
};
