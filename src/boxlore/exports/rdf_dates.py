"""A date that is worked out, in linked data: an entity that was derived from statements (PROV-O, 3.1)."""

from boxlore.core.records.item_record import Record
from boxlore.exports.escaping import literal
from boxlore.exports.rdf_terms import EDTF, RDF_TYPE, prefixed, text_literal, urn


def worked_out_triples(node: str, record: Record) -> list[str]:
    """A date that follows from statements, as an entity of its own: what it was derived from, and how, in PROV-O. It is
    no dcterms:created of the item, for nobody has told it."""
    dated = record.worked_out
    if dated is None:
        return []
    entity, activity = f"{node[:-1]}#date-worked-out>", f"{node[:-1]}#working-out>"
    statements = dict.fromkeys(urn(because.statement) for because in dated.because if because.statement)
    return [
        f"{node} {prefixed('bx:date_worked_out')} {entity} .",
        f"{entity} {RDF_TYPE} {prefixed('prov:Entity')} .",
        f"{entity} {prefixed('dcterms:date')} {literal(dated.edtf)}^^<{EDTF}> .",
        f"{entity} {prefixed('rdfs:label')} {text_literal(f'worked out: {dated.display}', 'en')} .",
        f"{entity} {prefixed('prov:wasGeneratedBy')} {activity} .",
        f"{activity} {RDF_TYPE} {prefixed('prov:Activity')} .",
        *(f"{entity} {prefixed('prov:wasDerivedFrom')} {statement} ." for statement in statements),
        *(f"{activity} {prefixed('prov:used')} {statement} ." for statement in statements),
        *(
            f"{entity} {prefixed('bx:because')} {text_literal(f'{because.words} ({because.source})', 'en')} ."
            for because in dated.because
        ),
    ]
