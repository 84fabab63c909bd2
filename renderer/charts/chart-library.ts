import {
  Chart,
  Filler,
  LinearScale,
  LineElement,
  LogarithmicScale,
  PointElement,
  ScatterController,
  Tooltip,
} from "chart.js";
import annotationPlugin from "chartjs-plugin-annotation";
import { drawInTurn } from "./draw-turns.ts";

Chart.register(
  ScatterController,
  LineElement,
  PointElement,
  LinearScale,
  LogarithmicScale,
  Filler,
  Tooltip,
  annotationPlugin,
);

let used = false;

/**
 * Draws a chart when it is its turn. A window's first chart has the library compiled on its way, which takes as long as
 * the drawing: two axes and then a line between them, out of sight and a task each, take their share of that before it.
 */
export function drawChartInTurn(draw: () => void): void {
  if (!used) drawInTurn(drawAxes);
  drawInTurn(draw);
}

function drawAxes(): void {
  used = true;
  const axis = { min: 0, max: 1, title: { display: true, text: "" } };
  const chart = new Chart(document.createElement("canvas"), {
    type: "scatter",
    data: { datasets: [] },
    options: { animation: false, responsive: false, scales: { x: axis, y: axis } },
  });
  drawInTurn(function drawLine() {
    const data = [
      { x: 0, y: 0 },
      { x: 1, y: 1 },
    ];
    chart.data.datasets = [{ data, showLine: true, fill: "origin" }];
    chart.update("none");
    chart.destroy();
  });
}

export { Chart };
