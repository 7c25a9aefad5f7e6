"""A Schematron (ISO/IEC 19757-3) of query language XPath 2.0, run rule by rule by elementpath (PyPI).

It knows what the published Schematron of EAD3 has: patterns with rules, `let`, `assert` and `report`. In a pattern the
first rule whose context matches holds. Lists of codes that it reads from files are given as variables in their place.
"""

import re
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any

from elementpath import ElementNode, XPath2Parser, XPathContext, get_node_tree
from lxml import etree

SCH = "{http://purl.oclc.org/dsdl/schematron}"
_FROM_FILES = re.compile(r"\bdocument\(|\$language-code-lookups")


def broken(schema: Path, document: etree._Element, codes: Mapping[str, Any]) -> Iterator[str]:
    """`rule context: what it says` for each assertion that does not hold, and each report that does. `codes` are
    variables by their names, which go before those of the schema."""
    root = etree.parse(schema).getroot()
    asking = _Asking(document, {element.get("prefix"): element.get("uri") for element in root.iter(f"{SCH}ns")})
    shared = asking.lets(root, codes)
    for pattern in root.iter(f"{SCH}pattern"):
        variables = asking.lets(pattern, shared)
        done: set[ElementNode] = set()
        for rule in pattern.iter(f"{SCH}rule"):
            context = str(rule.get("context"))
            anywhere = "|".join(f"//{path.strip()}" for path in _alternatives(context))
            for node in asking.all(anywhere, variables):
                if node not in done:
                    done.add(node)
                    yield from (f"{context}: {words}" for words in asking.wrong(rule, node, variables))


class _Asking:
    """XPath asked of one document, each expression parsed once."""

    def __init__(self, document: etree._Element, names: Mapping[Any, Any]) -> None:
        self.tree = get_node_tree(document)
        self.parser = XPath2Parser(dict(names))
        self.parsed: dict[str, Any] = {}

    def _context(self, path: str, variables: Mapping[str, Any], node: Any = None) -> tuple[Any, XPathContext]:
        if path not in self.parsed:
            self.parsed[path] = self.parser.parse(path)
        return self.parsed[path], XPathContext(self.tree, item=node, variables=dict(variables))

    def all(self, path: str, variables: Mapping[str, Any]) -> list[Any]:
        token, context = self._context(path, variables)
        return list(token.select(context))

    def lets(self, within: etree._Element, known: Mapping[str, Any], node: Any = None) -> dict[str, Any]:
        """What is `known`, and what the schema lets be here, of a rule for this `node`."""
        variables = dict(known)
        for let in within.iterchildren(f"{SCH}let"):
            name, value = str(let.get("name")), str(let.get("value"))
            if name not in variables and not _FROM_FILES.search(value):
                token, context = self._context(value, variables, node)
                variables[name] = token.get_results(context)
        return variables

    def wrong(self, rule: etree._Element, node: Any, variables: Mapping[str, Any]) -> Iterator[str]:
        known = self.lets(rule, variables, node)
        for check in (*rule.iter(f"{SCH}assert"), *rule.iter(f"{SCH}report")):
            token, context = self._context(f"boolean({check.get('test')})", known, node)
            if bool(token.evaluate(context)) is (check.tag == f"{SCH}report"):
                yield f"{' '.join(''.join(check.itertext()).split())} (<{node.name}> {dict(node.elem.attrib)})"


def _alternatives(context: str) -> Iterator[str]:
    """The paths between the strokes that stand in no brackets."""
    depth, start = 0, 0
    for at, letter in enumerate(context):
        depth += (letter in "([") - (letter in ")]")
        if letter == "|" and not depth:
            yield context[start:at]
            start = at + 1
    yield context[start:]
