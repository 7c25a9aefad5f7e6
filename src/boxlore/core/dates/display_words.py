"""What stands around a date in a family's own language: about, before, the summer of, the 1930s.

The words are ours (common practice, no source); those were taken that need no other form of the date behind them
(“hiljemalt 12. mai 1912”, “не позднее 12 мая 1912 г.”). What a row leaves out is English.
"""

from collections.abc import Mapping

_KEYS = ("~", "?", "%", "before", "after", "between", "or", "and", "unknown-start", "unknown-end", "decade", "season")


def _words(sentences: str, seasons: str) -> dict[str, str]:
    """A row: words in the order of _KEYS with `;` between, `-` for English; spring, summer, autumn and winter."""
    row = {key: words for key, words in zip(_KEYS, sentences.split(";"), strict=True) if words != "-"}
    row |= {f"season-{code}": name for code, name in zip(range(21, 25), seasons.split("|"), strict=True)}
    return row | ({"century": row["decade"]} if "{1}" not in row.get("decade", "{1}") else {})


WORDS: Mapping[str, Mapping[str, str]] = {
    "en": _words(
        "about {};probably {};probably about {};not later than {};not earlier than {};between {} and {}; or ;"
        " and ;until {};from {};the {}s;{s} {y}",
        "spring|summer|autumn|winter",
    ),
    "et": _words(
        "umbes {};tõenäoliselt {};tõenäoliselt umbes {};hiljemalt {};mitte varem kui {};vahemikus {} kuni {};"
        " või ; ja ;kuni {};alates {};{}. aastad;{y}. aasta {s}",
        "kevad|suvi|sügis|talv",
    ),
    "de": _words(
        "etwa {};wahrscheinlich {};wahrscheinlich etwa {};spätestens {};frühestens {};zwischen {} und {}; oder ;"
        " und ;bis {};ab {};{}er Jahre;{s} {y}",
        "Frühling|Sommer|Herbst|Winter",
    ),
    "fr": _words(
        "vers {};probablement {};probablement vers {};au plus tard {};au plus tôt {};entre {} et {}; ou ; et ;"
        "jusqu’à {};à partir de {};les années {};{s} {y}",
        "printemps|été|automne|hiver",
    ),
    "es": _words(
        "hacia {};probablemente {};probablemente hacia {};a más tardar {};no antes de {};entre {} y {}; o ; y ;"
        "hasta {};desde {};la década de {};{s} de {y}",
        "primavera|verano|otoño|invierno",
    ),
    "it": _words(
        "circa {};probabilmente {};probabilmente circa {};non dopo il {};non prima del {};tra {} e {}; o ; e ;"
        "fino al {};dal {};anni {};{s} {y}",
        "primavera|estate|autunno|inverno",
    ),
    "pt": _words(
        "aproximadamente {};provavelmente {};provavelmente aproximadamente {};o mais tardar {};não antes de {};"
        "entre {} e {}; ou ; e ;até {};desde {};década de {};{s} de {y}",
        "primavera|verão|outono|inverno",
    ),
    "nl": _words(
        "omstreeks {};waarschijnlijk {};waarschijnlijk omstreeks {};uiterlijk {};niet eerder dan {};"
        "tussen {} en {}; of ; en ;tot {};vanaf {};de jaren {};{s} {y}",
        "lente|zomer|herfst|winter",
    ),
    "da": _words(
        "omkring {};sandsynligvis {};sandsynligvis omkring {};senest {};tidligst {};mellem {} og {}; eller ; og ;"
        "indtil {};fra {};{}’erne;{s} {y}",
        "foråret|sommeren|efteråret|vinteren",
    ),
    "sv": _words(
        "omkring {};troligen {};troligen omkring {};senast {};tidigast {};mellan {} och {}; eller ; och ;"
        "till och med {};från och med {};{}-talet;{s} {y}",
        "våren|sommaren|hösten|vintern",
    ),
    "nb": _words(
        "omkring {};sannsynligvis {};sannsynligvis omkring {};senest {};tidligst {};mellom {} og {}; eller ; og ;"
        "til {};fra {};{}-årene;{s} {y}",
        "våren|sommeren|høsten|vinteren",
    ),
    "fi": _words(
        "noin {};luultavasti {};luultavasti noin {};viimeistään {};aikaisintaan {};"
        "aikaisintaan {}, viimeistään {}; tai ; ja ;– {};{} –;{}-luku;{s} {y}",
        "kevät|kesä|syksy|talvi",
    ),
    "ru": _words(
        "примерно {};вероятно, {};вероятно, примерно {};не позднее {};не ранее {};с {} по {}; или ; и ;до {};"
        "с {};{}-е годы;{s} {y}",
        "весна|лето|осень|зима",
    ),
    "pl": _words(
        "mniej więcej {};prawdopodobnie {};prawdopodobnie mniej więcej {};nie później niż {};"
        "nie wcześniej niż {};od {} do {}; lub ; i ;do {};od {};lata {0}–{1};{s} {y}",
        "wiosna|lato|jesień|zima",
    ),
    "lv": _words(
        "aptuveni {};iespējams, {};iespējams, aptuveni {};ne vēlāk kā {};ne agrāk kā {};no {} līdz {}; vai ; un ;"
        "līdz {};no {};{}. gadi;{y}. gada {s}",
        "pavasaris|vasara|rudens|ziema",
    ),
    "lt": _words(
        "maždaug {};tikriausiai {};tikriausiai maždaug {};ne vėliau kaip {};ne anksčiau kaip {};nuo {} iki {};"
        " arba ; ir ;iki {};nuo {};{}-ieji;{y} m. {s}",
        "pavasaris|vasara|ruduo|žiema",
    ),
    "cs": _words(
        "přibližně {};pravděpodobně {};pravděpodobně přibližně {};nejpozději {};nejdříve {};od {} do {}; nebo ;"
        " a ;do {};od {};léta {0}–{1};{s} {y}",
        "jaro|léto|podzim|zima",
    ),
    "hu": _words(
        "körülbelül {};valószínűleg {};valószínűleg körülbelül {};legkésőbb {};legkorábban {};{} és {} között;"
        " vagy ; és ;– {};{} –;{0}–{1};{y} {s}",
        "tavasza|nyara|ősze|tele",
    ),
    "mi": _words(
        "tata ki {};{} pea;tata ki {} pea;tae noa ki {};mai i {};i waenga i {} me {};-; me ;tae noa ki {};"
        "mai i {};ngā tau {};{s} {y}",
        "kōanga|raumati|ngahuru|takurua",
    ),
}
