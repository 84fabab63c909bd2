import type { plantMethodWords } from "../plant-methods.ts";

export const plantMethods: typeof plantMethodWords = {
  rates: {
    what: "TR-Fracht und Mengenströme",
    formula:
      "TR-Fracht = 1000 Q rho TR; Wirksubstanz = TR-Fracht x D; Handelsware = Wirksubstanz / Wirksubstanzanteil; Lösung = Wirksubstanz / Konzentration; Ansetzwasser = Lösung - Handelsware; Nachverdünnung auf eine kleinere Konzentration = Wirksubstanz / diese Konzentration - Lösung; Wasser mit 1,000 kg/L",
    source:
      "Massenbilanz, unabhängig nachgerechnet (20 m³/h zu 2,5 % und 4 kg/t ergeben 501,5 kg/h und 77,28 mL/min)",
  },
  feedFlow: {
    what: "Zulaufstrom",
    formula:
      "wie gemessen; Volumen durch Zeit; Fläche x Änderung des Füllstands durch Zeit; Zufuhr minus Rücklauf; relative Unsicherheiten quadratisch addiert",
    source: "Volumenbilanz",
  },
  pumpLine: {
    what: "Pumpengerade und Einstellung",
    formula:
      "Förderstrom = a + b x Einstellung nach kleinsten Quadraten, nie durch den Ursprung gezwungen; Einstellung = (Förderstrom - a) / b mit Standardfehler (s/b) sqrt(1 + 1/n + (Einstellung - Mittel)^2 / Sxx); nichts außerhalb der ausgeliterten Einstellungen",
    source: "übliche Kalibrierstatistik, unabhängig nachgerechnet (77,2846 mL/min ergeben 92,05 % ± 0,65)",
  },
  pumpCurve: {
    what: "Pumpenkurve, Gewichte, Hub mal Drehzahl",
    formula:
      "eine Kurve zweiten Grades, wo die Gerade an der Modellabweichung scheitert, nur behalten, wenn sie über den ganzen Bereich steigt; Gewichte 1 / Förderstrom^2 nur auf Wunsch; der Hub, der bei gehaltener Drehzahl gleich viel fördert: Null + (Hub - Null) x Drehzahl / gehaltene Drehzahl",
    source: "übliche Statistik; Hub mal Drehzahl unabhängig nachgerechnet (50,870 L/h)",
  },
  pumpCheck: {
    what: "Wiederholbarkeit, Linearität und Stellbereich einer Pumpe",
    formula:
      "größte Spanne bei einer Einstellung und größter Abstand eines Mittels von der Geraden, je durch den Förderstrom bei der höchsten Einstellung; höchster durch niedrigster Förderstrom",
    source:
      "Prüfung nach Art von API 675: diese Norm gilt nur für oszillierende Pumpen, und wie wir ihre Begriffe lesen, ist unsere eigene Auslegung",
  },
  cylinder: {
    what: "Messzylinderband",
    formula:
      "95 % einer einzelnen Auslitermessung: Streuung der Pumpe und Fehler der Geraden, Messzylinder und Stoppuhr (halbe Breite / sqrt(3)) quadratisch addiert, mit Students Faktor bei den effektiven Freiheitsgraden",
    source:
      "JCGM 100 für die Summe (Abschnitt aus dem Gedächtnis); ± 1 mL und ± 0,3 s, sofern der Betrieb keine eigenen Werte einträgt, sind übliche Praxis, ohne Quelle",
  },
  makeDownUnit: {
    what: "Ansetzanlage, Verbrauch und Vorrat",
    formula:
      "Reifevolumen = Lösung x Reifezeit x (1 + Totvolumen); ein Ansatz reicht sein Volumen durch die Lösung; Verbrauch = Handelsware x Stunden x Tage; Vorrat in Tagen = Vorrat durch Tagesverbrauch",
    source: "Massen- und Volumenbilanz, unabhängig nachgerechnet",
  },
  outlet: {
    what: "Nasser Kuchen, Rücklauf, Polymer auf Flächen",
    formula:
      "nasser Kuchen = TR-Fracht x R (1 + D / 1000 x im Kuchen verbleibender Anteil) / C; zurückgeführte TSS = TR-Fracht x (1 - R); höchste Dosis = erlaubtes Polymer je Hektar / je Hektar ausgebrachte Trockenmasse",
    source: "Massenbilanz; bei Flächen entscheidet die örtliche Genehmigung",
  },
  loading: {
    what: "Belastung der Maschine",
    formula: "TR-Fracht / wirksame Breite, gegen die Grenzwerte des Betreibers",
    source:
      "Grenzwerte wie eingetragen; die 40, 50 und 60 kg/h·m des Beispiels sind Anfangswerte für eine langsame Maschinenklasse, übliche Praxis, ohne Quelle",
  },
  solidsDrift: {
    what: "Dosis, wenn der TR des Zulaufs sich ändert, Rohr für eine Verzögerung",
    formula:
      "Dosis jetzt = eingestellte Dosis x TR beim Einstellen / TR jetzt; Rohrlänge = Durchfluss x Verzögerung / Querschnitt",
    source: "Massen- und Volumenbilanz, unabhängig nachgerechnet",
  },
  runDose: {
    what: "Dosis eines Betriebsversuchs",
    formula:
      "Wirksubstanz durch Trockenrückstand auf drei Wegen: im Messzylinder aufgefangen, Masseverlust des Gebindes, Pumpengerade bei der Einstellung; liegen sie weiter als 5 % auseinander, ist eine Messung falsch",
    source: "Massenbilanz; die 5 % sind übliche Praxis, ohne Quelle",
  },
  factor: {
    what: "Übertragungsfaktor",
    formula:
      "geometrisches Mittel von Betriebsdosis durch Labordosis für eine Maschine, einen Schlamm und ein Produkt; Bereich t(n - 1) s / sqrt(n) im Logarithmus; die nächste Dosis bekommt die Streuung eines weiteren Versuchs",
    source: "übliche Statistik; meist 0,8 bis 1,5 (übliche Praxis, ohne Quelle)",
  },
  drift: {
    what: "Driftüberwachung",
    formula:
      "Routineversuche auf einer Einzelwertkarte: Mittel ± 3 x mittlere gleitende Spannweite / 1,128; jenseits der Grenzen oder acht in Folge auf einer Seite der Mitte",
    source: "Shewhart-Karten, aus dem Gedächtnis",
  },
  stepTest: {
    what: "Stufenversuch und paarweiser Vergleich",
    formula:
      "Stufen um Faktor x Labordosis; beprobt nach drei Verweilzeiten; Paare: mittlere Differenz ± t(n - 1) s / sqrt(n), zweiseitiges p",
    source: "übliche Statistik; das Warten und die Größe einer Stufe sind übliche Praxis, ohne Quelle",
  },
  age: {
    what: "Alter einer Probe",
    formula: "nach einem Tag hat sie sich verändert: eine frische nehmen",
    source: "übliche Praxis, ohne Quelle",
  },
};
