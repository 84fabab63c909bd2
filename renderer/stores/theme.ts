import { defineStore } from "pinia";
import { computed, ref, watchEffect } from "vue";

export const looks = ["system", "light", "dark", "contrast-light", "contrast-dark"] as const;
export type Look = (typeof looks)[number];
const key = "flocwright.theme";

function useMedia(query: string) {
  const media = matchMedia(query);
  const matches = ref(media.matches);
  media.addEventListener("change", (event) => (matches.value = event.matches));
  return matches;
}

/** Light or dark, usual or high contrast: the system's wish until somebody chooses. */
export const useTheme = defineStore("theme", () => {
  const systemDark = useMedia("(prefers-color-scheme: dark)");
  const systemContrast = useMedia("(prefers-contrast: more)");
  const forced = useMedia("(forced-colors: active)");
  const stored = localStorage.getItem(key);
  const look = ref<Look>(looks.find((one) => one === stored) ?? "system");
  const theme = computed<"light" | "dark">(() => {
    if (look.value === "system") return systemDark.value ? "dark" : "light";
    return look.value.endsWith("dark") ? "dark" : "light";
  });
  const contrast = computed<"usual" | "more">(() => {
    const more = look.value === "system" ? systemContrast.value : look.value.startsWith("contrast");
    return more ? "more" : "usual";
  });
  /** one word for each set of colours: what draws with colours of its own draws anew when it changes */
  const ink = computed(() => `${theme.value} ${contrast.value} ${forced.value ? "forced" : ""}`);

  // At once, so that whoever draws anew because the ink changed reads the new tokens.
  watchEffect(
    () => {
      document.documentElement.dataset["theme"] = theme.value;
      document.documentElement.dataset["contrast"] = contrast.value;
    },
    { flush: "sync" },
  );

  function choose(value: Look): void {
    look.value = value;
    localStorage.setItem(key, value);
  }

  return { look, ink, choose };
});
