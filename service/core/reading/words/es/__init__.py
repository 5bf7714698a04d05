"""Spanish."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary
from service.core.reading.words.es import alike, hull, letter, measures, things

VOCABULARY = Vocabulary(
    language="es",
    common="el la los las de del y es un una con por para que en se no su al lo nuestro mi tenemos tengo buenas buenos "
    "días tardes queremos saber qué hola gracias más está muy sobre como me les sus este esta son hay pero ya le "
    "nos cuál desde hasta tiene quisiera",
    numbers=Numbers(
        ones="cero un/uno/una dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince "
        "dieciséis diecisiete dieciocho diecinueve",
        tens="veinte treinta cuarenta cincuenta sesenta setenta ochenta noventa",
        joint="{ten} y {one}",
        hundred="cien/ciento",
        half="medio/media",
        and_="y",
        whole="veintiuno=21 veintiún=21 veintidós=22 veintitrés=23 veinticuatro=24 veinticinco=25 veintiséis=26 "
        "veintisiete=27 veintiocho=28 veintinueve=29 tres_cuartos_de=0.75 "
        "decena_de=10 quincena_de=15 veintena_de=20 treintena_de=30 cuarentena_de=40",
    ),
    concepts=measures.WORDS | hull.WORDS | things.WORDS | letter.WORDS,
    alike=alike.ALIKE,
)
