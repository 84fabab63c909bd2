import { defineStore } from "pinia";
import { computed, ref, watchEffect } from "vue";

export type Theme = "light" | "dark";
const key = "flocwright.theme";

/** Light or dark: the system's wish until somebody chooses. */
export const useTheme = defineStore("theme", () => {
  const system = matchMedia("(prefers-color-scheme: dark)");
  const systemDark = ref(system.matches);
  system.addEventListener("change", (event) => (systemDark.value = event.matches));
  const stored = localStorage.getItem(key);
  const chosen = ref<Theme | null>(stored === "light" || stored === "dark" ? stored : null);
  const theme = computed<Theme>(() => chosen.value ?? (systemDark.value ? "dark" : "light"));

  watchEffect(() => {
    document.documentElement.dataset["theme"] = theme.value;
  });

  function toggle(): void {
    chosen.value = theme.value === "dark" ? "light" : "dark";
    localStorage.setItem(key, chosen.value);
  }

  return { theme, toggle };
});
