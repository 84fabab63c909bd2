import tseslint from "typescript-eslint";
import vue from "eslint-plugin-vue";
import vueParser from "vue-eslint-parser";

export default tseslint.config(
  { ignores: ["node_modules/**", "out/**", "test-results/**", "playwright-report/**", "screens/**"] },
  ...tseslint.configs.recommended,
  ...vue.configs["flat/recommended"],
  {
    files: ["**/*.vue"],
    languageOptions: { parser: vueParser, parserOptions: { parser: tseslint.parser, sourceType: "module" } },
  },
  {
    rules: {
      "@typescript-eslint/no-explicit-any": "error",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_" }],
      "@typescript-eslint/consistent-type-imports": "error",
      "no-console": "error",
      eqeqeq: ["error", "always", { null: "ignore" }],
      "max-lines": ["error", { max: 400, skipBlankLines: false, skipComments: false }],
      // Layout of templates is prettier's work; only the rules that catch mistakes stay on.
      "vue/html-self-closing": "off",
      "vue/max-attributes-per-line": "off",
      "vue/singleline-html-element-content-newline": "off",
      "vue/multiline-html-element-content-newline": "off",
      "vue/html-indent": "off",
      "vue/html-closing-bracket-newline": "off",
      "vue/attributes-order": "off",
      "vue/first-attribute-linebreak": "off",
      "vue/require-default-prop": "off",
      "vue/multi-word-component-names": "off",
      "vue/no-v-html": "error",
      "no-undef": "off",
    },
  },
  // Texts change with the language: outside the screens, which are loaded anew, they are read where they are used.
  {
    files: ["src/**", "main/**"],
    rules: {
      "no-restricted-syntax": [
        "error",
        {
          selector: "MemberExpression[object.name=/[wW]ords$/]:not(:function MemberExpression)",
          message: "A text read while the module loads stays in one language: read it in a function.",
        },
        {
          selector: "CallExpression[callee.name='sourceOf']:not(:function CallExpression)",
          message: "A source asked for while the module loads stays in one language: ask in a function.",
        },
      ],
    },
  },
  // Texts stand in src/words; signs, units and names of the trade's figures are the same in every language.
  {
    files: ["renderer/**/*.vue"],
    rules: {
      "vue/no-bare-strings-in-template": [
        "error",
        {
          allowlist: [
            ..."()[]{}.,;:·–—-+±×=/%&#*?!…↓↑▸○✓→←".split(""),
            ..."0,1,■,▶,p,95 %,mL,min,pH,AICc,R²,mg/L,NTU,s,g,h,Flocwright,t/V,s/mL,A,B,G,Gt".split(","),
          ],
          attributes: {
            "/.+/": [
              "title",
              "aria-label",
              "aria-roledescription",
              "aria-valuetext",
              "label",
              "hint",
              "empty",
              "heading",
            ],
            input: ["placeholder"],
          },
        },
      ],
    },
  },
  // A terminal program and its scripts speak through the console; nothing else does.
  {
    files: [
      "scripts/**",
      "test/bench/**",
      "test/soak/**",
      "test/torture/**",
      "test/storage/*-runner.ts",
      "test/security/*.mjs",
      "main/headless.ts",
    ],
    rules: { "no-console": "off" },
  },
);
