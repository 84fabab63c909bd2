// Fails on exports of src, main and renderer that no other file of the product imports. Tests do not count as users:
// what only a test needs is listed below with the reason. Read through the TypeScript compiler, so that types count too.
import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import ts from "typescript";

const root = process.argv[2] ? resolve(process.argv[2]) : resolve(import.meta.dirname, "..");

/** Exports that stand for a test, or that a tool outside the imports reads, each with its reason. */
const seams = {
  "src/bench/dose.ts drySolidsG": "the worked dose is checked part by part",
  "src/bench/mixing.ts gradientPerS": "a published power and its gradient are checked by themselves",
  "src/choice/desirability.ts targetDesirability": "the published example has two wishes with a target",
  "src/choice/limits.ts holdingSpans": "checked on a wavy function, which no fitted curve is",
  "src/curve/analyse-verdict.ts ninetyDose": "worked numbers give 90 % of a gain",
  "src/curve/bootstrap.ts bootstrapOptima": "the draws are compared with another program's",
  "src/curve/profile.ts heldDeviance": "the profile is checked at single doses",
  "src/curve/surface-bootstrap.ts caseBootstrap":
    "the bench measures it against a budget; no screen offers it",
  "src/choice/target-steps.ts targetStep": "round steps are checked on their own",
  "src/exchange/columns.ts plainHead": "heads with umlauts are checked one by one",
  "src/words/language.ts registeredAreas": "the test of the words reads every area",
  "src/plant/pump-line.ts settingError": "its coverage is simulated",
  "src/report/markup.ts escapeText": "property tests feed it hostile text",
  "src/sample/density.ts dryMatterDensityKgPerL": "the worked density is checked part by part",
  "src/study/exchange/whole-study.ts studyFrom": "tests read the exported study back",
  "src/study/library/row.ts seriesSummarySchema": "tests make summaries from the schema",
  "src/study/library/row.ts sortColumns": "tests sort by every column",
  "src/study/library/search.ts foldText": "tests feed it letters of many alphabets",
  "main/hosts/electron/allow.ts allowTable": "a test reads the table as a table",
  "main/hosts/loopback/policy.ts contentPolicy": "tests compare what is sent with it",
  "main/storage/backups.ts backupFolder": "tests look into the folder",
  "main/storage/index-file.ts indexFileName": "tests spoil the file",
  "main/storage/steps.ts watchSteps": "tests die between two writes",
};

function files(folder) {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return files(path);
    return /\.(ts|vue|mjs)$/.test(name) && !name.endsWith(".d.ts") ? [path] : [];
  });
}

const here = (path) => relative(root, path).replaceAll("\\", "/");
const scriptOf = (path) => {
  const text = readFileSync(path, "utf8");
  if (!path.endsWith(".vue")) return text;
  return [...text.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map(([, code]) => code).join("\n");
};

const exported = new Map();
const used = new Set();
const product = ["src", "main", "renderer"].flatMap((top) => files(join(root, top)));
const others = [...files(join(root, "scripts")), join(root, "electron.vite.config.ts")];

const isExported = (node) => node.modifiers?.some((one) => one.kind === ts.SyntaxKind.ExportKeyword);

for (const path of [...product, ...others]) {
  const source = ts.createSourceFile(path, scriptOf(path), ts.ScriptTarget.Latest, true);
  const names = [];
  const uses = (target, name) => {
    if (target.startsWith(".")) used.add(`${here(resolve(dirname(path), target))} ${name}`);
  };
  const visit = (node) => {
    if (ts.isImportDeclaration(node)) {
      const { name, namedBindings } = node.importClause ?? {};
      const target = node.moduleSpecifier.text;
      if (name) uses(target, "default");
      if (namedBindings && ts.isNamespaceImport(namedBindings)) uses(target, "*");
      if (namedBindings && ts.isNamedImports(namedBindings))
        for (const one of namedBindings.elements) uses(target, (one.propertyName ?? one.name).text);
    } else if (ts.isExportDeclaration(node)) {
      for (const one of node.exportClause?.elements ?? []) {
        names.push(one.name.text);
        if (node.moduleSpecifier) uses(node.moduleSpecifier.text, (one.propertyName ?? one.name).text);
      }
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      if (ts.isStringLiteral(node.arguments[0])) uses(node.arguments[0].text, "*");
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
      uses(node.argument.literal.text, node.qualifier?.text ?? "*");
    } else if (isExported(node)) {
      if (ts.isVariableStatement(node))
        for (const one of node.declarationList.declarations)
          if (ts.isIdentifier(one.name)) names.push(one.name.text);
      if (node.name) names.push(node.name.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  // A type that an exported thing of its own file speaks of may be needed by name in declarations: it counts as used.
  const spoken = new Set();
  const types = new Set();
  for (const node of source.statements) {
    if (!isExported(node)) continue;
    if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) types.add(node.name.text);
    const collect = (part) => {
      if (
        ts.isTypeReferenceNode(part) &&
        ts.isIdentifier(part.typeName) &&
        part.typeName.text !== node.name?.text
      )
        spoken.add(part.typeName.text);
      if (ts.isExpressionWithTypeArguments(part) && ts.isIdentifier(part.expression))
        spoken.add(part.expression.text);
      ts.forEachChild(part, collect);
    };
    collect(node);
  }
  if (product.includes(path))
    exported.set(
      here(path),
      names.filter((name) => !(types.has(name) && spoken.has(name))),
    );
}

const faults = [];
const known = new Set();
for (const [file, names] of exported)
  for (const name of names) {
    if (used.has(`${file} ${name}`) || used.has(`${file} *`)) continue;
    const seam = `${file} ${name}`;
    if (seam in seams) known.add(seam);
    else faults.push(`${file}: exports ${name}, which nothing of the product imports`);
  }
for (const seam of Object.keys(seams))
  if (!known.has(seam)) faults.push(`${seam}: is listed as a seam for nothing`);
if (faults.length > 0) {
  process.stderr.write(faults.join("\n") + `\n${faults.length} fault(s) of exports\n`);
  process.exit(1);
}
process.stdout.write("every export is used\n");
