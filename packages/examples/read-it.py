import pandas

course = pandas.read_csv("tank.csv", parse_dates=["date"], index_col="date")
print(course["nitrate_tank"].resample("7D").mean().round(1).to_string())
