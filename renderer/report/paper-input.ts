import { onMounted, ref, shallowRef, watch } from "vue";
import type { PaperHistory, PaperInput } from "../../src/report/paper-input.ts";
import { call } from "../client.ts";
import { useStudy } from "../stores/study.ts";

/** What every paper needs from this window: the study shown, the moment, and where its history stands on disk. */
export function usePaperInput() {
  const study = useStudy();
  const moment = ref(new Date().toISOString());
  const history = shallowRef<PaperHistory | null>(null);
  const version = ref("");
  const trouble = ref("");

  const refresh = () => {
    moment.value = new Date().toISOString();
  };

  async function anchor(): Promise<void> {
    const answer = await call("study.anchor", {});
    trouble.value = answer.ok ? "" : answer.message;
    history.value = answer.ok ? answer.value : null;
    refresh();
  }

  onMounted(async () => {
    const about = await call("host.about", {});
    if (about.ok) version.value = about.value.version;
    await anchor();
  });
  watch(
    () => [study.changes, study.saveState],
    () => void anchor(),
  );

  /** null until everything is there, and while an edit is still on its way to the disk */
  function input(): PaperInput | null {
    if (!study.state || !history.value || study.saveState !== "saved") return null;
    return {
      state: study.state,
      now: moment.value,
      utcOffsetMin: -new Date(moment.value).getTimezoneOffset(),
      version: version.value,
      history: history.value,
    };
  }

  return { input, refresh, trouble };
}
