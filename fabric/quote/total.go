package quote

// Of reckons a quote. It fails when there is nothing to make or a cloth
// cannot be bought, or, with plan.ErrInternal, when an amount is wrong.
func Of(request Request) (Quote, error) {
	if err := request.check(); err != nil {
		return Quote{}, err
	}
	out := Quote{Request: request, Lines: request.lines()}
	for _, line := range out.Lines {
		out.Subtotal += line.Cost
	}
	out.Total = out.Subtotal
	if tax := request.Tax; tax != nil && tax.Included {
		out.TaxSum = tax.Rate.within(out.Subtotal)
	} else if tax != nil {
		out.TaxSum = tax.Rate.Of(out.Subtotal)
		out.Total += out.TaxSum
	}
	out.DepositSum = request.Deposit.Of(out.Total)
	out.Balance = out.Total - out.DepositSum
	for _, cloth := range request.Cloths {
		if saving, ok := savingOf(cloth.Cloth, cloth.Option); ok {
			out.Together = append(out.Together, saving)
		}
	}
	return out, out.proven()
}
