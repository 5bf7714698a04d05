"""The fit: is this configuration right for this boat, where does it sit, and how sure is that.

`site` the boat as arrays · `skin` its surface · `kit` the metal as arrays · `solids` distances ·
`checks` every check of a placement · `place` the best placement · `draws` what is not known exactly ·
`engine` one fit, from form to verdict · `fasteners` pads, bolts, parts. All lengths in mm, angles in degrees.
"""
