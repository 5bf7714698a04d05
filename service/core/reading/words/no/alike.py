"""Norwegian: frequent words that mean nothing here and are one slip away from one that does."""

ALIKE = (
    "akselsen ander aning ansar ansatt apnet asken badet bagen baker balanserer bankende bates beretter besvare "
    "besvares better bevarte blandet blide boende boret bortgang broen broer bruer brygger bryggeri brygget burke "
    "byger davis doren endre faset fastslatt femme finns fjernt fletter flyte flyter fodes foles forbi forlover "
    "forsatt forsette forstatt forsvart forutsatt frame gamlematen garder gjerning gjete gjeter gjetting "
    "handlaget heger hemme heter hodene hoder horne invest investert istedetfor kameraet kappes kjolvannet "
    "kruttet laering lageret lages laget lagring laret latet leder lederen leger leges leier leieren lende "
    "lengter lider losen mailene malerne malet manger marlene montorer motorveier nesen oppforer opprorer "
    "overfalt overse overtalt overvant planer planten plasser press prosjekt prosjektet ranet rorte ruset rusfri "
    "seilet seler sener sentre sentret seter siger sikker singer sitater siter skammen skatt skills skruer "
    "skryter skudd skule skyer skytter slettes slipe smitter sopper sprekker staal stater steigen stenen steven "
    "stevens stien stier storstue stramme stredet streiker streker sture styrk sveisere sveits svelger syner "
    "syter syttende talene tekkes tenningen terningen terningene terninger tolerante trener trenges tripper "
    "troppen undre untatt utsalg veksten vestre viklet vinden vingen vinket vipps"
)
