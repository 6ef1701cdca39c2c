"""What the scripts that listen share: English words of numbers and dates, and a farm to speak of."""

ONES = "one two three four five six seven eight nine".split()
TEENS = "ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split()
TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split()
FIRST = "first second third fourth fifth sixth seventh eighth ninth".split()
LATER = "tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth".split()
MONTHS = "January February March April May June July August September October November December".split()


def farm(harvest="2027-05-24", rains="2027-11-25", area_m2=450):
    """A case file."""
    return f"""name = "A farm"
language = "en"
harvest = {harvest}
[place]
name = "A place"
latitude = -6.2
longitude = 36.1
elevation_m = 1000
[season]
rains_begin = {rains}
[field]
area_m2 = {area_m2}
"""
