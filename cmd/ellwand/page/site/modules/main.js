// begin
