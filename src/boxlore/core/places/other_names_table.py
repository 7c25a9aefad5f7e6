"""Names that people used for a town and that the gazetteer's own lists lack. From memory; a name is one row.

Each row: today's main name in the gazetteer, ISO country, other names. They go into the index when it is built.
"""

ALSO: tuple[tuple[str, str, tuple[str, ...]], ...] = (
    ("Tallinn", "EE", ("Ревель", "Rewal", "Räävel")),
    ("Tartu", "EE", ("Юрьев", "Jurjew", "Yuryev", "Дерпт")),
    ("Rakvere", "EE", ("Wesenberg", "Везенберг")),
    ("Paide", "EE", ("Weissenstein", "Weißenstein", "Вейсенштейн")),
    ("Kuressaare", "EE", ("Arensburg", "Kingissepa", "Аренсбург")),
    ("Haapsalu", "EE", ("Hapsal", "Гапсаль")),
    ("Viljandi", "EE", ("Fellin", "Феллин")),
    ("Pärnu", "EE", ("Pernau", "Перновъ", "Пернов")),
    ("Valga", "EE", ("Walk", "Валк")),
    ("Võru", "EE", ("Werro", "Верро")),
    ("Põltsamaa", "EE", ("Oberpahlen",)),
    ("Tapa", "EE", ("Taps",)),
    ("Paldiski", "EE", ("Baltischport", "Baltic Port", "Балтийский Порт")),
    ("Narva", "EE", ("Narwa",)),
    ("Port Chalmers", "NZ", ("Koputai",)),
    ("Auckland", "NZ", ("Tāmaki Makaurau",)),
    ("Wellington", "NZ", ("Te Whanganui-a-Tara", "Pōneke")),
    ("Christchurch", "NZ", ("Ōtautahi",)),
    ("Invercargill", "NZ", ("Waihōpai",)),
    ("Thunder Bay", "CA", ("Fort William", "Port Arthur")),
    ("Frankfurt am Main", "DE", ("Frankfurt a. M.", "Frankfurt a. Main")),
    ("Frankfurt (Oder)", "DE", ("Frankfurt a. O.", "Frankfurt a. d. Oder")),
    ("Kaliningrad", "RU", ("Königsberg i. Pr.", "Königsberg in Preußen")),
    ("Toruń", "PL", ("Thorn",)),
    ("Derry", "GB", ("Londonderry",)),
    ("Kyiv", "UA", ("Kiew",)),
)
