// @vitest-environment jsdom
import fc from "fast-check";
import { expect, test } from "vitest";
import { markup } from "../../src/report/markup.ts";
import { paperDocument } from "../../src/report/paper.ts";
import { settingSheet } from "../../src/report/setting-sheet.ts";
import { demo, edited, sheetInput } from "../unit/report/studies.ts";
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

const known = new Set(
  "HTML HEAD META TITLE STYLE BODY MAIN ARTICLE HEADER SECTION DIV H1 H2 P STRONG SPAN TABLE CAPTION THEAD TBODY TR TH TD UL LI".split(
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
        for (const { name } of element.attributes)
          expect(["class", "scope", "lang", "charset", "http-equiv", "content", "name"]).toContain(name);
      }
      expect(page.querySelector("h2")!.textContent).toContain(text);
      expect(page.title).toContain(text.replace(/[\t\n\f\r ]+/g, " "));
    }),
    { numRuns: 40 },
  );
});
