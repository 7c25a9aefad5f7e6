"""Māori. Everyday usage (common practice, no source); months of the old reckoning after Te Taura Whiri (from memory)."""

from boxlore.core.dates.languages.language import Language

MAORI = Language(
    code="mi",
    months=(
        "kohitātea huitanguru poutūterangi paengawhāwhā haratua pipiri hōngongoi hereturikōkā mahuru whiringa-ā-nuku whiringa-ā-rangi hakihea",
    ),
    weekdays=("rāhina rātū rāapa rāpare rāmere rāhoroi rātapu",),
    words={
        "about": "tata ki|tata ki te tau|āhua",
        "doubt": "pea|tērā pea",
        "about_behind": "pea rā",
        "or": "rānei|ki te kore",
        "and": "me|me te",
        "between": "i waenganui i|waenganui i|i waenga i",
        "before": "i mua i|mua i|i mua i te|i mua i te tau",
        "after": "i muri i|muri i|i muri i te|i muri mai i|i muri i te tau",
        "since": "mai i|mai i te|mai i te tau",
        "until": "tae noa ki|tae noa ki te tau",
        "from": "mai i",
        "to": "ki te|ki|tae noa ki",
        "early": "te tīmatanga o|tīmatanga o",
        "mid": "te waenganui o|waenganui o",
        "late": "te mutunga o|mutunga o",
        "spring": "kōanga",
        "summer": "raumati",
        "autumn": "ngahuru",
        "winter": "takurua|hōtoke|makariri",
        "day": "rā|rangi",
        "week": "wiki",
        "month": "marama",
        "year": "tau",
        "decades": "ngā tau",
        "century": "rautau",
        "noise": "te|i|i te|o|o te|ko te|ko|whakaahua|he",
        "undated": "kāore i te mōhiotia|aua",
    },
    feasts={
        "christmas": "kirihimete|te kirihimete|rā kirihimete",
        "new year": "tau hou|te tau hou",
        "easter": "aranga|te aranga",
        "matariki": "te matariki",
    },
)
