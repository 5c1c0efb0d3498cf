module toy

go 1.26.0
