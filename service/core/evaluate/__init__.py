"""How good the answers are, scored on what is known to be right. Pure: the cases come in, the scores go out."""
