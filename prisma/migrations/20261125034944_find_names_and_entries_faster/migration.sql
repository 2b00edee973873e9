-- CreateIndex
CREATE INDEX "audit_entry_table_name_id_idx" ON "audit_entry"("table_name", "id");

-- CreateIndex
CREATE INDEX "structure_name_text_trigram" ON "structure_name" USING GIN ("text" gin_trgm_ops);
