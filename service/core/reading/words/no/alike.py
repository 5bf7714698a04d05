"""Norwegian: frequent words that mean nothing here and are one slip away from one that does."""

ALIKE = (
    "ansar ansatt apnet bagen baker balanserer bates besvare besvares bevarte blide boret broer brygger bryggeri "
    "brygget burke byger doren endre faset femme finns fjernt flyte flyter fodes foles forbi forlover forsatt "
    "forsette forstatt forsvart forutsatt frame gjerning gjeter gjetting heger heler hemme hodene hoyer investert "
    "istedetfor kameraet kappes kjolvannet kruttet lageret lages laget laret latet leder leger leges leier lende "
    "lengter lider losen mailene malerne malet manger marlene montorer motorveier nesen overse overvant planten "
    "rorte seilet seler sener sentre seter siger sikker skruer skudd slettes slipe staal stater steigen stenen "
    "steven stevens stien stier storstue stredet strikker sture svelger syttende tenningen terningen terningene "
    "terninger trener trenges tripper troppen undre untatt utsalg veksten vestre viklet vinket vipps"
)
