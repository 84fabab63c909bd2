// @vitest-environment jsdom
import fc from "fast-check";
import { expect, test } from "vitest";
import { markup } from "../../src/report/markup.ts";
import { paperDocument } from "../../src/report/paper.ts";
import { trialReport } from "../../src/report/trial-report.ts";
import { settingSheet } from "../../src/report/setting-sheet.ts";
import { demo, edited, paperInput, sheetInput } from "../unit/report/studies.ts";
import { parsed } from "../unit/report/page-text.ts";

const pieces = [
  "<",
  ">",
  "&",
  '"',
  "'",
  "</p>",
  "<script>",
  "<img src=x onerror=a>",
  "&lt;",
  "-->",
  "</style>",
  "${x}",
  "\r",
  "]]>",
];
const hostile = fc
  .array(fc.oneof(fc.constantFrom(...pieces), fc.string({ maxLength: 6 })), { maxLength: 12 })
  .map((parts) => parts.join("").replaceAll("\u0000", ""));

test("whatever text is put in shows as that text, in an element and in an attribute", () => {
  fc.assert(
    fc.property(hostile, hostile, (text, value) => {
      const page = parsed(markup`<div title="${value}"><p>${text}</p></div>`.html);
      expect(page.querySelector("p")!.textContent).toBe(text);
      expect(page.querySelector("div")!.getAttribute("title")).toBe(value);
      expect(page.querySelectorAll("body *")).toHaveLength(2);
    }),
  );
});

test("no text in a study can add an element to a report either, and no number comes out as none", () => {
  const label = hostile.map((text) => `x${text.replace(/\p{Cc}/gu, "")}`.slice(0, 110).trim());
  fc.assert(
    fc.property(label, hostile, (name, note) => {
      const input = paperInput(
        edited(
          demo,
          { do: "set", kind: "series", id: "series-1", fields: { label: name, note } },
          { do: "set", kind: "sample", id: "sample-1", fields: { note, place: note } },
          {
            do: "set",
            kind: "jar",
            id: "jar-1-05",
            fields: { label: name, note, leftOut: { reason: "other", note } },
          },
          { do: "set", kind: "machine", id: "machine-1", fields: { note, label: name } },
          { do: "set", kind: "pump", id: "pump-1", fields: { label: name } },
        ),
      );
      const fits = ["series-1"].map((seriesId) => ({
        seriesId,
        analysis: null,
        workings: [],
        trouble: note,
      }));
      const page = parsed(paperDocument(trialReport({ ...input, fits })));
      // The drift charts and the pump's line are the only drawings of a report without fits.
      expect(page.querySelectorAll("figure > svg")).toHaveLength(3);
      expect(page.querySelectorAll("img")).toHaveLength(1);
      for (const element of page.querySelectorAll("*")) {
        if (element.closest("figure > svg")) {
          expect(drawn).toContain(element.tagName);
          for (const attribute of element.attributes) expect(attribute.name).not.toMatch(/^on|href|src/);
          continue;
        }
        if (element.tagName === "IMG") {
          expect(element.getAttribute("src")).toBe(demo.photo["drawing-1"]!.image);
          expect(element.getAttributeNames().sort()).toEqual(["alt", "height", "src", "width"]);
          continue;
        }
        expect(known).toContain(element.tagName);
        for (const attribute of element.attributes) expect(knownAttributes).toContain(attribute.name);
      }
      expect(page.body.textContent).toContain(note);
      expect(page.body.textContent).not.toMatch(/NaN|Infinity/);
    }),
    { numRuns: 25 },
  );
});

const drawn = "svg title desc g path rect circle line polyline text tspan".split(" ");
const knownAttributes = [
  "class",
  "scope",
  "data-lead",
  "data-tail",
  "lang",
  "charset",
  "http-equiv",
  "content",
  "name",
];
const known = new Set(
  "HTML HEAD META TITLE STYLE BODY MAIN ARTICLE HEADER SECTION DIV FIGURE FIGCAPTION H1 H2 H3 H4 P DL DT DD STRONG SPAN TABLE CAPTION THEAD TBODY TR TH TD UL LI".split(
    " ",
  ),
);

test("no name in a study can add an element or an attribute of its own to a sheet", () => {
  const label = hostile.map((text) => `x${text.replace(/\p{Cc}/gu, "")}`.slice(0, 110).trim());
  fc.assert(
    fc.property(label, (text) => {
      const state = edited(
        demo,
        { do: "set", kind: "study", id: "study", fields: { name: text } },
        { do: "set", kind: "product", id: "product-1", fields: { label: text, lot: text.slice(0, 40) } },
        { do: "set", kind: "pump", id: "pump-1", fields: { label: text } },
        { do: "set", kind: "feedCase", id: "feed-2", fields: { label: text } },
        { do: "set", kind: "makeDown", id: "makedown-1", fields: { injectionPoint: text } },
      );
      const page = parsed(paperDocument(settingSheet(sheetInput(state))));
      for (const element of page.querySelectorAll("*")) {
        expect(known).toContain(element.tagName);
        for (const attribute of element.attributes) expect(knownAttributes).toContain(attribute.name);
      }
      expect(page.querySelector("h2")!.textContent).toContain(text);
      expect(page.title).toContain(text.replace(/[\t\n\f\r ]+/g, " "));
    }),
    { numRuns: 40 },
  );
});
