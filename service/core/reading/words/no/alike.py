"""Norwegian: frequent words that mean nothing here and are one slip away from one that does."""

ALIKE = (
    "ander aning ansar ansatt apnet bagen baker balanserer bankende bates beretter besvare besvares better "
    "bevarte blide boende boret broen broer brygger bryggeri brygget burke byger davis doren endre faset "
    "fastslatt femme finns fjernt fletter flyte flyter fodes foles forbi forlover forsatt forsette forstatt "
    "forsvart forutsatt frame gamlematen gjerning gjete gjeter gjetting handlaget heger hemme heter hodene hoder "
    "horne invest investert istedetfor kameraet kappe kappes kjolvannet kruttet laering lageret lages laget "
    "lagring laret latet leder lederen leger leges leier leieren lende lengter lider losen mailene malerne malet "
    "manger marlene montorer motorveier nesen overfalt overse overtalt overvant planten prosjekt prosjektet rorte "
    "rusfri seilet seler sener sentre sentret seter siger sikker singer sitater siter skammen skatt skruer "
    "skryter skudd skyer skytter slettes slipe smitter sprekker staal stammen stater steigen stenen steven "
    "stevens stien stier storstue stredet streiker streker sture sveisere sveits svelger syter syttende tekkes "
    "tenningen terningen terningene terninger tolerante trener trenges tripper troppen undre untatt utsalg "
    "veksten vestre viklet vinden vingen vinket vipps"
)
