import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import ts from "typescript";
import { expect, it } from "vitest";

const root = join(import.meta.dirname, "..", "..", "..");

/** Functions that answer with a text of now. */
const speakers = new Set(["sourceOf", "fieldLabel", "unitText", "makeDownCautions", "plantCautions"]);

function files(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => join(entry.parentPath, entry.name));
}

/** Where a module reads a text while it is loaded, not when it is asked. */
function readAtLoad(name: string, text: string): string[] {
  const source = ts.createSourceFile(name, text, ts.ScriptTarget.Latest, true);
  const texts = new Set<string>();
  const isArea = (one: ts.Node | undefined) =>
    one !== undefined && ts.isCallExpression(one) && one.expression.getText() === "area";
  for (const statement of source.statements) {
    if (ts.isImportDeclaration(statement)) {
      const bindings = statement.importClause?.namedBindings;
      if (bindings && ts.isNamedImports(bindings))
        for (const { name: local } of bindings.elements) if (/Words$/.test(local.text)) texts.add(local.text);
    }
    if (ts.isVariableStatement(statement))
      for (const { name: local, initializer } of statement.declarationList.declarations)
        if (isArea(initializer)) texts.add(local.getText());
  }
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) || ts.isTypeNode(node) || ts.isClassLike(node)) return;
    const read =
      (ts.isPropertyAccessExpression(node) || ts.isElementAccessExpression(node)) &&
      texts.has(node.expression.getText());
    const asked = ts.isCallExpression(node) && speakers.has(node.expression.getText());
    if (read || asked) found.push(`${name}: ${node.getText()}`);
    ts.forEachChild(node, visit);
  };
  source.statements.forEach(visit);
  return found;
}

it("no module of the domain or the host keeps a text from the moment it was loaded", () => {
  const found = ["src", "main"].flatMap((top) =>
    files(join(root, top)).flatMap((path) => readAtLoad(relative(root, path), readFileSync(path, "utf8"))),
  );
  expect(found).toEqual([]);
});

it("such a copy is seen, and reading it later is none", () => {
  const copied =
    'import { oneWords } from "./one.ts";\nconst title = oneWords.title;\nconst list = [sourceOf("a")];';
  expect(readAtLoad("x.ts", copied)).toEqual(["x.ts: oneWords.title", 'x.ts: sourceOf("a")']);
  const later =
    'const words = area("x", { title: "t" });\nconst one = { get title() { return words.title; }, head: () => words.title };';
  expect(readAtLoad("x.ts", later)).toEqual([]);
});
