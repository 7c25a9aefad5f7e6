"""What is worked out, as it is shown to who sits (our own contract; what follows from what: tests/core/evidence)."""

from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.progress import Quiet
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.sitting.worked_out import dates_worked_out, more_to_ask, worth_asking


class Stopped(Quiet):
    def stopped(self) -> bool:
        return True


def test_what_only_she_can_date_and_what_follows_for_the_keeper(demo: Path) -> None:
    with open_collection(demo, write=False) as collection:
        asked = {question.number: question for question in more_to_ask(collection, "Liisi Kuusk")}
        assert asked["TRA-0023"].words == "How old does Mari Tamm look here, about?" and asked["TRA-0023"].kind == "age"
        assert asked["TRA-0023"].why.startswith("By what is told so far, an answer settles about ")
        assert "19" not in " ".join(question.words for question in asked.values())  # she is told nothing of the others
        assert more_to_ask(collection, "Nobody Known") == []
        dated = {row.number: row for row in dates_worked_out(collection)}
        against = dated["TRA-0003"]
        assert next(iter(dated)) == "TRA-0003" and not against.worked and len(against.because) == 2
        assert dated["TRA-0020"].worked == "between 7 April 1975 and 4 July 1975"
        assert dated["TRA-0020"].because == ("TRA-0020 is dated “7/4/75” (Leida Rourke)",)
        assert "TRA-0002" not in dated
        assert (dated["TRA-0005"].told, dated["TRA-0005"].worked) == ("about 1926; 1927", "1927")  # told 1927 by two
        assert "TRA-0021" not in dated  # “the thirties” are 1930 to 1939, which is no news
        for look in (
            lambda: more_to_ask(collection, "Liisi Kuusk", Stopped()),
            lambda: dates_worked_out(collection, Stopped()),
        ):
            with pytest.raises(CouldNot):
                look()


def test_what_is_worth_asking_of_the_photograph_that_is_shown(demo: Path) -> None:
    with open_collection(demo, write=False) as collection:
        wanted = {("TRA-0023", "Liisi Kuusk"): ["How old does Mari Tamm look here, about?"], ("TRA-0001", "Leida"): [],
                  ("TRA-0023", "Nobody Known"): [], ("TRA-0023", ""): [], ("TRA-0004", "Leida Rourke"): []}  # fmt: skip
        for (number, name), questions in wanted.items():
            record = record_of(collection, find_item(collection, number).id)
            assert worth_asking(collection, record, name) == questions, (number, name)
